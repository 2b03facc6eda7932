import { afterEach, expect, test, vi } from 'vitest';
import { takeInFile } from '../../src/page/take-in.ts';
import { openJobsPage } from './made-jobs-page.ts';

afterEach(() => document.body.replaceChildren());

test('a sheet of one’s own is listed with its hash, and can be let go of', async () => {
  const { root, session, button } = await openJobsPage();
  await takeInFile(session, session.desk(), new File(['# Mine\n'], 'mine.md'));
  await vi.waitFor(() => expect(root.querySelector('h1')?.textContent).toBe('Mine'));
  session.open('#/jobs');
  await vi.waitFor(() => expect(root.querySelector('h1')?.textContent).toBe('Jobs'));
  const { version } = session.desk().job().foreign.mine!;
  expect(root.querySelector('[aria-labelledby=own-sheets]')?.textContent).toContain(version);
  button(/^Let go/).click();
  await vi.waitFor(() => expect(session.desk().job().foreign).toEqual({}));
});
