import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { NEW_JOB } from '../../src/job/record.ts';
import type { Saved } from '../../src/job/store.ts';
import { createSaver, REST } from '../../src/page/saver.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

function create() {
  const told: Saved[] = [];
  const saved: Saved = { state: 'saved', at: new Date(0) };
  const store = { load: () => ({}), save: () => saved };
  return {
    told,
    saver: createSaver(
      store,
      () => NEW_JOB,
      (one) => told.push(one),
    ),
  };
}

test('a change is saved when it has rested, well within a second', () => {
  const { told, saver } = create();
  saver.touch();
  vi.advanceTimersByTime(REST);
  expect(told).toHaveLength(1);
  expect(REST).toBeLessThan(1000);
});

test('a drag is saved once', () => {
  const { told, saver } = create();
  for (let i = 0; i < 20; i++) {
    saver.touch();
    vi.advanceTimersByTime(REST / 2);
  }
  vi.advanceTimersByTime(REST);
  expect(told).toHaveLength(1);
});

test('a page that is hidden saves at once, and not again', () => {
  const { told, saver } = create();
  saver.touch();
  saver.flush();
  saver.flush();
  vi.advanceTimersByTime(REST);
  expect(told).toHaveLength(1);
});
