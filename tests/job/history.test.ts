import { expect, test } from 'vitest';
import { createHistory, type History, record, redo, undo } from '../../src/job/history.ts';
import { entryIn, type Job, NEW_JOB, withEntry, withTick } from '../../src/job/record.ts';

const typed = (text: string, job: Job = NEW_JOB): Job => withEntry(job, 'sheet', 'gap', { text });
const gapOf = (history: History): string | undefined => entryIn(history.job, 'sheet', 'gap')?.text;

test('undo takes the last change back, redo makes it again', () => {
  const changed = record(createHistory(NEW_JOB), 'gap 1 in to 2 in', typed('2'));
  expect(gapOf(undo(changed))).toBeUndefined();
  expect(gapOf(redo(undo(changed)))).toBe('2');
});

test('every step has its name', () => {
  const changed = record(createHistory(NEW_JOB), 'gap 1 in to 2 in', typed('2'));
  expect(changed.past.at(-1)?.label).toBe('gap 1 in to 2 in');
  expect(undo(changed).future.at(-1)?.label).toBe('gap 1 in to 2 in');
});

test('entries, ticks and units share one line of changes', () => {
  let history = record(createHistory(NEW_JOB), 'gap', typed('2'));
  history = record(history, 'tick', withTick(history.job, 'sheet', 'a', '2026-03-14'));
  expect(undo(history).job).toEqual(typed('2'));
  expect(undo(undo(history)).job).toEqual(NEW_JOB);
});

test('at the beginning undo does nothing, at the end redo does nothing', () => {
  const history = createHistory(NEW_JOB);
  expect(undo(history)).toBe(history);
  expect(redo(history)).toBe(history);
});

test('a change after an undo lets go of what was undone', () => {
  const undone = undo(record(createHistory(NEW_JOB), 'first', typed('2')));
  const changed = record(undone, 'second', typed('3'));
  expect(changed.future).toEqual([]);
  expect(gapOf(redo(changed))).toBe('3');
});

test('no change is no step', () => {
  const history = createHistory(NEW_JOB);
  expect(record(history, 'nothing', NEW_JOB)).toBe(history);
});

test('a drag of a slider is one step, however many values it passed', () => {
  let history = record(createHistory(NEW_JOB), 'typed', typed('1'));
  for (const text of ['2', '3', '4'])
    history = record(history, `to ${text}`, typed(text), 'drag 1');
  expect(history.past.map((step) => step.label)).toEqual(['typed', 'to 4']);
  expect(gapOf(undo(history))).toBe('1');
  expect(gapOf(redo(undo(history)))).toBe('4');
});

test('the next drag is the next step', () => {
  let history = record(createHistory(NEW_JOB), 'to 2', typed('2'), 'drag 1');
  history = record(history, 'to 3', typed('3'), 'drag 2');
  expect(gapOf(undo(history))).toBe('2');
});

test('a step that was undone and redone takes nothing more in', () => {
  const dragged = record(createHistory(NEW_JOB), 'to 2', typed('2'), 'drag 1');
  const more = record(redo(undo(dragged)), 'to 3', typed('3'), 'drag 1');
  expect(gapOf(undo(more))).toBe('2');
});

test('hundreds of steps can be taken back', () => {
  let history = createHistory(NEW_JOB);
  for (let i = 0; i < 600; i++) history = record(history, `step ${i}`, typed(String(i)));
  for (let i = 0; i < 400; i++) history = undo(history);
  expect(gapOf(history)).toBe('199');
  expect(history.past).toHaveLength(100);
});
