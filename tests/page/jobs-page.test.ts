import { afterEach, expect, test } from 'vitest';
import { createJobsPage } from '../../src/page/jobs-page.ts';
import { openJobsPage } from './made-jobs-page.ts';

afterEach(() => document.body.replaceChildren());

test('says what stays on this device and names each of its parts', async () => {
  const { root } = await openJobsPage();
  expect(root.querySelector('main .stays')?.textContent).toMatch(/stays on this device/);
  const headings = [...root.querySelectorAll('h2')].map(({ textContent }) => textContent);
  expect(headings).toEqual([
    'This job',
    'Take it with you',
    'Your jobs',
    'Open a job',
    'Sheets from outside',
  ]);
});

test('can be left and lets go of what it listens to', async () => {
  const { session } = await openJobsPage();
  const page = createJobsPage(session.desk(), session);
  page.refreshAll();
  page.refresh(new Set());
  expect(() => page.dispose()).not.toThrow();
});
