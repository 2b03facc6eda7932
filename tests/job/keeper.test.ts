import { beforeEach, expect, test, vi } from 'vitest';
import { createHistory, record } from '../../src/job/history.ts';
import { createKeeper } from '../../src/job/keeper.ts';
import { NEW_JOB } from '../../src/job/record.ts';
import { clearBrowser, makeStore, NOON, typeAll, typed } from './made-store.ts';

beforeEach(clearBrowser);

function make(revision = 0) {
  const store = makeStore();
  const onSaved = vi.fn();
  const start = { id: 'a', revision, job: NEW_JOB };
  return { store, onSaved, keeper: createKeeper(store, start, () => NOON, onSaved) };
}

test('each save follows the one before, and the others are told', async () => {
  const { store, keeper, onSaved } = make();
  expect(await keeper.save(typeAll('1'))).toEqual({ state: 'saved', at: NOON });
  await keeper.save(typeAll('2'));
  expect(onSaved.mock.calls).toEqual([
    ['a', 1],
    ['a', 2],
  ]);
  expect(await store.load('a')).toMatchObject({ revision: 2, history: { job: typed('2') } });
});

test('what is saved already is not saved again', async () => {
  const { keeper, onSaved } = make();
  const history = typeAll('1');
  await keeper.save(history);
  await keeper.save(history);
  expect(onSaved).toHaveBeenCalledOnce();
  expect(keeper.isSaved(history.job)).toBe(true);
});

test('overtaken by another window, it goes on with a copy and leaves the other alone', async () => {
  const { store, keeper } = make();
  await keeper.save(typeAll('1'));
  await store.save('a', 1, typeAll('2'));
  const saved = await keeper.save(typeAll('3'));
  expect(saved).toEqual({
    state: 'copied',
    at: NOON,
    title: 'Worked example (copy of this window)',
  });
  expect(keeper.id()).not.toBe('a');
  expect(await store.load('a')).toMatchObject({ history: { job: typed('2') } });
  expect(await store.load(keeper.id())).toMatchObject({
    history: { job: { entries: typed('3').entries } },
  });
});

test('what another window saved is followed, and not saved once more', async () => {
  const { store, keeper, onSaved } = make();
  await keeper.save(typeAll('1'));
  await store.save('a', 1, typeAll('2'));
  const theirs = typeAll('2');
  keeper.follow(theirs.job, 2);
  expect(await keeper.save(theirs)).toMatchObject({ state: 'saved' });
  expect(onSaved).toHaveBeenCalledOnce();
  const mine = record(theirs, 'more', typed('3'));
  expect(await keeper.save(mine)).toMatchObject({ state: 'saved' });
  expect(keeper.revision()).toBe(3);
});

test('word is left of what is not saved, and of nothing else', async () => {
  const { store, keeper } = make();
  const history = typeAll('1');
  await keeper.save(history);
  expect(keeper.rescue(history)).toBe(false);
  expect(keeper.rescue(typeAll('2'))).toBe(true);
  expect(await store.load('a')).toMatchObject({ history: { job: typed('2') } });
});

test('word that is left while a save is under way is the newer of the two', async () => {
  const { store, keeper } = make();
  await keeper.save(typeAll('1'));
  const saving = keeper.save(typeAll('2'));
  keeper.rescue(typeAll('3'));
  await saving;
  expect(await store.load('a')).toMatchObject({ history: { job: typed('3') } });
});

test('a save that fails is told, and the next one is tried from where it stood', async () => {
  const { store, keeper } = make();
  const save = vi.spyOn(store, 'save');
  save.mockResolvedValueOnce({ state: 'failed', trouble: 'Not saved' });
  expect(await keeper.save(typeAll('1'))).toEqual({ state: 'failed', trouble: 'Not saved' });
  expect(keeper.isSaved(createHistory(NEW_JOB).job)).toBe(true);
  expect(await keeper.save(typeAll('1'))).toMatchObject({ state: 'saved' });
});
