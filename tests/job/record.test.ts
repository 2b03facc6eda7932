import { expect, test } from 'vitest';
import {
  changedEntries,
  entryIn,
  isStarted,
  NEW_JOB,
  noteIn,
  tickIn,
  withEntry,
  withForeignSheet,
  withNote,
  withSheetVersion,
  withSystem,
  withTick,
} from '../../src/job/record.ts';

const typed = withEntry(NEW_JOB, '70-release-bearing', 'gap', { text: '3 1/8', unit: 'in' });

test('an entry is found by its sheet and name', () => {
  expect(entryIn(typed, '70-release-bearing', 'gap')).toEqual({ text: '3 1/8', unit: 'in' });
});

test('a sheet that nobody touched has no entries', () => {
  expect(entryIn(typed, '20-gearing', 'gap')).toBeUndefined();
  expect(isStarted(typed, '20-gearing')).toBe(false);
});

test('the job before a change is left as it was', () => {
  expect(NEW_JOB.entries).toEqual({});
});

test('taking back the only entry leaves a sheet that is not started', () => {
  const back = withEntry(typed, '70-release-bearing', 'gap', undefined);
  expect(back.entries).toEqual({});
  expect(isStarted(back, '70-release-bearing')).toBe(false);
});

test('an entry of no text is an entry: the given was left blank', () => {
  const blank = withEntry(NEW_JOB, '20-gearing', 'redline', { text: '' });
  expect(entryIn(blank, '20-gearing', 'redline')).toEqual({ text: '' });
});

test('a sheet on which all was left blank is not started', () => {
  const blank = withEntry(NEW_JOB, '20-gearing', 'redline', { text: ' ' });
  expect(isStarted(blank, '20-gearing')).toBe(false);
  expect(isStarted(withEntry(blank, '20-gearing', 'cruise', { text: '70' }), '20-gearing')).toBe(
    true,
  );
});

test('a tick alone starts a sheet', () => {
  const ticked = withTick(NEW_JOB, '20-gearing', 'tyre-size', '2026-03-14');
  expect(tickIn(ticked, '20-gearing', 'tyre-size')).toEqual({ on: '2026-03-14' });
  expect(isStarted(ticked, '20-gearing')).toBe(true);
});

test.each(['__proto__', 'constructor', 'toString'])('%s is a name like any other', (name) => {
  expect(entryIn(NEW_JOB, name, name)).toBeUndefined();
  const job = withEntry(NEW_JOB, name, name, { text: '1' });
  expect(entryIn(job, name, name)).toEqual({ text: '1' });
  expect(changedEntries(NEW_JOB, job)).toEqual([[name, name]]);
});

test('only entries that differ count as changed', () => {
  const more = withEntry(typed, '20-gearing', 'redline', { text: '6000' });
  const same = withEntry(more, '70-release-bearing', 'gap', { text: '3 1/8', unit: 'in' });
  expect(changedEntries(typed, same)).toEqual([['20-gearing', 'redline']]);
  expect(changedEntries(same, typed)).toEqual([['20-gearing', 'redline']]);
});

test('an entry taken in another unit is another entry', () => {
  const metric = withEntry(typed, '70-release-bearing', 'gap', { text: '3 1/8', unit: 'mm' });
  expect(changedEntries(typed, metric)).toEqual([['70-release-bearing', 'gap']]);
});

test('the system of units leaves what was typed unchanged', () => {
  expect(withSystem(typed, 'metric')).toEqual({ ...typed, system: 'metric' });
});

test('a step is signed by whoever is at work when it is ticked', () => {
  const ann = withTick({ ...NEW_JOB, worker: 'Ann' }, 's', 'a', '2026-03-14');
  const both = withTick({ ...ann, worker: 'Bob' }, 's', 'b', '2026-03-15');
  expect(tickIn(both, 's', 'a')).toEqual({ on: '2026-03-14', by: 'Ann' });
  expect(tickIn(both, 's', 'b')).toEqual({ on: '2026-03-15', by: 'Bob' });
});

test('a note stands on its block until it has no words left', () => {
  const noted = withNote(NEW_JOB, 's', 'given gap', 'Burr on the face.\n');
  expect(noteIn(noted, 's', 'given gap')).toBe('Burr on the face.\n');
  expect(withNote(noted, 's', 'given gap', ' \n')).toEqual(NEW_JOB);
});

test('the version of a sheet is the last beside which something was entered', () => {
  const one = withSheetVersion(NEW_JOB, 's', 'a');
  expect(withSheetVersion(one, 's', 'a')).toBe(one);
  expect(withSheetVersion(one, 's', 'b').sheets).toEqual({ s: 'b' });
});

test('a sheet from outside belongs to the job until it is taken out', () => {
  const sheet = { version: 'a', text: '# Mine' };
  const job = withForeignSheet(NEW_JOB, '21-mine', sheet);
  expect(job.foreign).toEqual({ '21-mine': sheet });
  expect(withForeignSheet(job, '21-mine', undefined)).toEqual(NEW_JOB);
});
