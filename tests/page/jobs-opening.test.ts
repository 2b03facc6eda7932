import { afterEach, expect, test, vi } from 'vitest';
import { formatJobFile } from '../../src/job/read-job.ts';
import { NEW_JOB } from '../../src/job/record.ts';
import { openJobsPage } from './made-jobs-page.ts';

afterEach(() => document.body.replaceChildren());

test('a text that is pasted is opened as a copy', async () => {
  const { title, root, button } = await openJobsPage();
  const field = root.querySelector<HTMLTextAreaElement>('#pasted')!;
  field.value = formatJobFile({ ...NEW_JOB, title: 'Pasted' });
  button('Open what is pasted').click();
  await vi.waitFor(() => expect(title()).toBe('Pasted'));
});
