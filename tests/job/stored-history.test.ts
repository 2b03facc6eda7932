import { expect, test } from 'vitest';
import { createHistory, record, redo, undo } from '../../src/job/history.ts';
import {
  MOST_ROOM,
  MOST_STATES,
  restoreHistory,
  storeSteps,
} from '../../src/job/stored-history.ts';
import { makeLargeJob } from './made-job.ts';
import { typeAll, typed } from './made-store.ts';

const numbers = (count: number) => Array.from({ length: count }, (_, i) => String(i));

test('undo and redo go on where they were left', () => {
  const history = undo(undo(typeAll(...numbers(5))));
  const stored = JSON.parse(JSON.stringify(storeSteps(history)));
  const restored = restoreHistory(history.job, stored);
  expect(restored.past.map((step) => step.label)).toEqual(history.past.map((step) => step.label));
  expect(undo(restored).job).toEqual(undo(history).job);
  expect(redo(redo(restored)).job).toEqual(typed('4'));
  expect(redo(redo(redo(restored))).job).toEqual(typed('4'));
});

test('the last fifty states are kept, with their names', () => {
  const { past } = storeSteps(typeAll(...numbers(80)));
  expect(past).toHaveLength(MOST_STATES);
  expect(past[0]?.label).toBe('redline to 30');
  expect(past.at(-1)?.label).toBe('redline to 79');
});

test('a large job that is replaced again and again keeps what there is room for', () => {
  let history = createHistory(makeLargeJob(1_500_000));
  for (let i = 0; i < 6; i += 1) {
    history = record(history, `blank ${i}`, { ...history.job, notes: {} });
    history = record(history, `full ${i}`, makeLargeJob(1_500_000));
  }
  const { past } = storeSteps(history);
  expect(past.length).toBeGreaterThan(0);
  expect(past.length).toBeLessThan(12);
  expect(JSON.stringify(past).length).toBeLessThan(MOST_ROOM * 1.01);
  expect(restoreHistory(history.job, storeSteps(history)).past.at(-1)?.label).toBe('full 5');
});
