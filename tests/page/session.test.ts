import { afterEach, describe, expect, test, vi } from 'vitest';
import { createHistory } from '../../src/job/history.ts';
import { NEW_JOB, withEntry } from '../../src/job/record.ts';
import { makeBlockedStore, makeBrowser } from './made-session.ts';

afterEach(() => document.body.replaceChildren());

const wide = (text: string) => withEntry(NEW_JOB, '10-bolts', 'width', { text, unit: 'in' });

describe('a window', () => {
  test('opens on the demo where nothing is stored, and stores nothing until it is changed', async () => {
    const { openWindow, openStore } = makeBrowser();
    const { title, root, type, session } = await openWindow();
    expect(title()).toBe('The demo');
    expect(root.querySelector<HTMLElement>('.welcome')?.hidden).toBe(false);
    expect(await openStore().list()).toEqual([]);
    type('4');
    await session.save();
    expect(await openStore().list()).toMatchObject([{ title: 'The demo', revision: 1 }]);
  });

  test('opens again on what it had, with its undo', async () => {
    const { openWindow } = makeBrowser();
    const first = await openWindow();
    first.type('4');
    first.type('5');
    await first.session.save();
    first.close();
    const { field, root } = await openWindow();
    expect(field().value).toBe('5');
    root.querySelector<HTMLElement>('[aria-label^="Undo: Width"]')!.click();
    await vi.waitFor(() => expect(field().value).toBe('4'));
    expect(root.querySelector('.saved')?.textContent).toMatch(/^Saved in this browser/);
  });

  test('has what it left word of when it was closed before it could save', async () => {
    const { openWindow } = makeBrowser();
    const first = await openWindow();
    first.type('4');
    await first.session.save();
    first.type('5');
    first.session.leave();
    first.close();
    expect((await openWindow()).field().value).toBe('5');
  });

  test('has a job again that it left before it had ever been saved', async () => {
    const { openWindow, openStore } = makeBrowser();
    const slow = openStore();
    vi.spyOn(slow, 'save').mockReturnValue(new Promise(() => {}));
    const first = await openWindow(new Map(), slow);
    first.type('4');
    first.session.leave();
    first.close();
    expect((await openWindow(first.tab)).field().value).toBe('4');
  });

  test('keeps to its own job where another window has opened another', async () => {
    const { openWindow } = makeBrowser();
    const one = await openWindow();
    one.type('4');
    await one.session.save();
    const other = await openWindow();
    await other.session.openCopy({ ...NEW_JOB, title: 'Other' }, []);
    one.close();
    const again = await openWindow(one.tab);
    expect(again.title()).toBe('The demo');
    expect(again.field().value).toBe('4');
  });

  test('asks the browser once not to clear what it keeps', async () => {
    const { openWindow } = makeBrowser();
    const { type, session, mine } = await openWindow();
    type('4');
    await session.save();
    type('5');
    await session.save();
    expect(mine.persisted).toBe(1);
  });

  test('says at once that the browser keeps nothing, and works all the same', async () => {
    const { openWindow } = makeBrowser();
    const { alert, type, root, session } = await openWindow(new Map(), makeBlockedStore());
    expect(alert()).toMatch(/^Not saved: this browser does not let the page keep anything/);
    type('5');
    await session.save();
    await vi.waitFor(() => expect(root.querySelector('#twice strong')?.textContent).toMatch(/^10/));
    const buttons = [...root.querySelectorAll('[role=alert] button')];
    expect(buttons.map((button) => button.textContent)).toContain('Download the job');
    expect(session.isBehind()).toBe(true);
  });

  test('sets aside a job that cannot be read, and says where it is', async () => {
    const { openWindow, openStore } = makeBrowser();
    const store = openStore();
    const saved = await store.save('a', 0, createHistory(NEW_JOB));
    expect(saved.state).toBe('saved');
    vi.spyOn(store, 'load').mockImplementation(async (id) =>
      id === 'a'
        ? { state: 'unreadable', trouble: 'Gone bad', text: 'damaged' }
        : { state: 'none' },
    );
    const { alert, title } = await openWindow(new Map(), store);
    expect(alert()).toMatch(/cannot be read\. Gone bad.*under Jobs it can be downloaded/);
    expect(title()).toBe('The demo');
    expect(await store.listAside()).toMatchObject([{ text: 'damaged' }]);
  });

  test('goes on when the browser is cleared under it', async () => {
    const { openWindow, openStore, clear } = makeBrowser();
    const { type, session, alert } = await openWindow();
    type('4');
    await session.save();
    await clear();
    type('5');
    await session.save();
    expect(alert()).toBe('');
    const [card] = await openStore().list();
    const loaded = await openStore().load(card!.id);
    expect(loaded).toMatchObject({
      history: { job: { entries: { '10-bolts': { width: { text: '5' } } } } },
    });
  });
});

describe('two windows with the same job', () => {
  async function openBoth() {
    const browser = makeBrowser();
    const one = await browser.openWindow();
    one.type('4');
    await one.session.save();
    const two = await browser.openWindow();
    return { ...browser, one, two };
  }

  test('are told of each other', async () => {
    const { two } = await openBoth();
    await vi.waitFor(() => expect(two.alert()).toMatch(/open in another window too/));
  });

  test('take over what the other did, as a step that can be undone', async () => {
    const { one, two } = await openBoth();
    one.type('7');
    await one.session.save();
    await vi.waitFor(() => expect(two.field().value).toBe('7'));
    expect(two.root.querySelector('[aria-label="Undo: change in another window"]')).not.toBeNull();
    two.type('8');
    await two.session.save();
    await vi.waitFor(() => expect(one.field().value).toBe('8'));
  });

  test('do not answer each other without end', async () => {
    const { one, two } = await openBoth();
    one.type('7');
    await one.session.save();
    await vi.waitFor(() => expect(two.field().value).toBe('7'));
    await new Promise((resolve) => setTimeout(resolve, 800));
    const saves = [...one.words, ...two.words].filter(({ type }) => type === 'saved');
    expect(saves).toHaveLength(2);
  });

  test('that change at the same moment overwrite nothing: one goes on with a copy', async () => {
    const { one, two, openStore } = await openBoth();
    one.type('7');
    two.type('8');
    await Promise.all([one.session.save(), two.session.save()]);
    await vi.waitFor(async () => expect(await openStore().list()).toHaveLength(2));
    const alerts = [one.alert(), two.alert()].join(' ');
    expect(alerts).toMatch(/Nothing was overwritten: this window goes on with a copy/);
    const widths = await Promise.all(
      (await openStore().list()).map(async ({ id }) => {
        const loaded = await openStore().load(id);
        return loaded.state === 'loaded'
          ? loaded.history.job.entries['10-bolts']?.width?.text
          : loaded.state;
      }),
    );
    expect(widths.sort()).toEqual(['7', '8']);
  });
});

describe('changing over', () => {
  test('a new job leaves open what is measured and is one more', async () => {
    const { openWindow, openStore } = makeBrowser();
    const { session, type, title, field } = await openWindow();
    type('4');
    await session.save();
    session.newJob();
    await vi.waitFor(() => expect(title()).toBe('New job'));
    expect(field().value).toBe('');
    await vi.waitFor(async () => expect(await openStore().list()).toHaveLength(2));
  });

  test('a copy never touches what is here', async () => {
    const { openWindow, openStore } = makeBrowser();
    const { session, type, alert, field } = await openWindow();
    type('4');
    await session.openCopy({ ...wide('9'), title: 'From a file' }, ['Opened as a copy.']);
    expect(field().value).toBe('9');
    expect(alert()).toBe('Opened as a copy.');
    const cards = await openStore().list();
    expect(cards.map(({ title }) => title).sort()).toEqual(['From a file', 'The demo']);
    const demo = cards.find(({ title }) => title === 'The demo')!;
    expect(await openStore().load(demo.id)).toMatchObject({ state: 'loaded' });
    await session.openJob(demo.id);
    expect(field().value).toBe('4');
  });

  test('a job that is gone is told, and the open one stays', async () => {
    const { openWindow } = makeBrowser();
    const { session, alert, title } = await openWindow();
    await session.openJob('gone');
    expect(alert()).toMatch(/no longer in this browser/);
    expect(title()).toBe('The demo');
  });

  test('the demo can be opened again as it came', async () => {
    const { openWindow } = makeBrowser();
    const { session, type, field } = await openWindow();
    type('4');
    await session.openDemo();
    expect(field().value).toBe('3');
  });
});
