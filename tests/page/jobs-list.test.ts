import { afterEach, expect, test, vi } from 'vitest';
import { createHistory } from '../../src/job/history.ts';
import { NEW_JOB } from '../../src/job/record.ts';
import { openJobsPage } from './made-jobs-page.ts';

afterEach(() => document.body.replaceChildren());

async function openWithTwo() {
  const opened = await openJobsPage();
  await opened.store.save('a', 0, createHistory({ ...NEW_JOB, title: 'One', vehicle: 'Estate' }));
  await opened.store.save('b', 0, createHistory({ ...NEW_JOB, title: '\u202eTwo' }));
  opened.session.desk().setWorker('Ann');
  await opened.session.save();
  opened.session.desk().setWorker('Bob');
  await vi.waitFor(() => expect(opened.root.querySelectorAll('.job-name')).toHaveLength(3));
  return opened;
}

test('stand with when they were saved, the open one marked', async () => {
  const { root } = await openWithTwo();
  expect(root.querySelector('[aria-current=true]')?.textContent).toMatch(/The demo.*open now/);
  const all = root.querySelector('.job-list')?.textContent;
  expect(all).toMatch(/Estate: One.*saved 14 Mar 2026/);
});

test('a name that runs from right to left does not turn round what stands beside it', async () => {
  const { root } = await openWithTwo();
  const names = [...root.querySelectorAll('.job-name')];
  expect(names.every((name) => name.firstElementChild?.tagName === 'BDI')).toBe(true);
});

test('open and change places', async () => {
  const { button, title } = await openWithTwo();
  button(/^Open Estate: One/).click();
  await vi.waitFor(() => expect(title()).toBe('Estate: One'));
});

test('can be deleted, and brought back', async () => {
  const { button, root, store } = await openWithTwo();
  button(/^Delete Estate: One/).click();
  await vi.waitFor(() => expect(root.querySelectorAll('.job-name')).toHaveLength(2));
  button(/^Bring it back/).click();
  await vi.waitFor(() => expect(root.querySelectorAll('.job-name')).toHaveLength(3));
  expect(await store.load('a')).toMatchObject({ state: 'loaded' });
});

test('what could not be read can be downloaded', async () => {
  const { store, root, session } = await openJobsPage();
  await store.keepAside('damaged', 'Gone bad');
  session.desk().setWorker('Ann');
  await vi.waitFor(() => expect(root.textContent).toContain('Gone bad'));
});
