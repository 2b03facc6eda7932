import { afterEach, expect, test, vi } from 'vitest';
import { formatJobFile } from '../../src/job/read-job.ts';
import { NEW_JOB } from '../../src/job/record.ts';
import { openJobsPage } from './made-jobs-page.ts';

afterEach(() => document.body.replaceChildren());

const drop = (file: File) => {
  const dataTransfer = new DataTransfer();
  dataTransfer.items.add(file);
  const event = new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true });
  document.body.dispatchEvent(event);
  return event;
};

test('a file that is dropped on the page is opened as a copy', async () => {
  const { title } = await openJobsPage();
  const text = formatJobFile({ ...NEW_JOB, title: 'Dropped' });
  expect(drop(new File([text], 'a.json')).defaultPrevented).toBe(true);
  await vi.waitFor(() => expect(title()).toBe('Dropped'));
});

test('a text that is pasted is opened as a copy', async () => {
  const { title, root, button } = await openJobsPage();
  const field = root.querySelector<HTMLTextAreaElement>('#pasted')!;
  field.value = formatJobFile({ ...NEW_JOB, title: 'Pasted' });
  button('Open what is pasted').click();
  await vi.waitFor(() => expect(title()).toBe('Pasted'));
});
