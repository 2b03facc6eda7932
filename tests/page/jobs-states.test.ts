import { afterEach, expect, test } from 'vitest';
import { openJobsPage } from './made-jobs-page.ts';

afterEach(() => document.body.replaceChildren());

test('are listed by what was done, the last first, and can be gone back to', async () => {
  const { session, root, button } = await openJobsPage();
  const desk = session.desk();
  for (const worker of ['Ann', 'Bob', 'Cy']) desk.setWorker(worker);
  const items = [...root.querySelectorAll('.states li')].map(({ textContent }) => textContent);
  expect(items).toEqual([
    'Before: steps signed by Cy',
    'Before: steps signed by Bob',
    'Before: steps signed by Ann',
  ]);
  button('Before: steps signed by Bob').click();
  expect(desk.worker()).toBe('Ann');
  desk.redo();
  desk.redo();
  expect(desk.worker()).toBe('Cy');
});
