import { afterEach, expect, test } from 'vitest';
import { openJobsPage } from './made-jobs-page.ts';

afterEach(() => document.body.replaceChildren());

test('has a title, a vehicle and a signature, each a step that can be undone', async () => {
  const { root, session, title } = await openJobsPage();
  for (const [name, text] of [
    ['title', 'Five-speed'],
    ['vehicle', 'Estate'],
    ['worker', ' Ann '],
  ] as const) {
    const input = root.querySelector<HTMLInputElement>(`#job-${name}`)!;
    input.value = text;
    input.dispatchEvent(new Event('change'));
  }
  expect(session.desk().job()).toMatchObject({
    title: 'Five-speed',
    vehicle: 'Estate',
    worker: 'Ann',
  });
  expect(title()).toBe('Estate: Five-speed');
  session.desk().undo();
  session.desk().undo();
  expect(root.querySelector<HTMLInputElement>('#job-vehicle')?.value).toBe('');
});
