import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createHistory } from '../../src/job/history.ts';
import type { Saved } from '../../src/job/keeper.ts';
import { NEW_JOB } from '../../src/job/record.ts';
import { createSaver, REST, RETRY } from '../../src/page/saver.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const SAVED: Saved = { state: 'saved', at: new Date(0) };
const FAILED: Saved = { state: 'failed', trouble: 'Not saved' };

function create(save: () => Promise<Saved> = async () => SAVED) {
  const told: string[] = [];
  const saver = createSaver({
    history: () => createHistory(NEW_JOB),
    save,
    tell: ({ state }) => told.push(state),
  });
  return { told, saver };
}

test('a change is saved at once, and it is known when it is saved', async () => {
  const { told, saver } = create();
  saver.touch();
  expect(saver.isBehind()).toBe(true);
  await vi.advanceTimersByTimeAsync(0);
  expect(told).toEqual(['saved']);
  expect(saver.isBehind()).toBe(false);
});

test('in a drag that does not rest, no change waits a second', async () => {
  const { told, saver } = create();
  for (let i = 0; i < 20; i++) {
    saver.touch();
    await vi.advanceTimersByTimeAsync(REST / 3);
  }
  expect(told.length).toBeGreaterThan(5);
  expect(told.length).toBeLessThan(9);
  await vi.advanceTimersByTimeAsync(REST);
  expect(saver.isBehind()).toBe(false);
  expect(REST).toBeLessThan(1000);
});

test('a page that is hidden saves at once, and not again', async () => {
  const { told, saver } = create();
  saver.touch();
  await vi.advanceTimersByTimeAsync(0);
  saver.touch();
  await saver.flush();
  await saver.flush();
  await vi.advanceTimersByTimeAsync(REST);
  expect(told).toEqual(['saved', 'saved']);
});

test('a change during a save is saved after it, never beside it', async () => {
  let running = 0;
  let most = 0;
  const { told, saver } = create(async () => {
    running += 1;
    most = Math.max(most, running);
    await new Promise((resolve) => setTimeout(resolve, 500));
    running -= 1;
    return SAVED;
  });
  saver.touch();
  await vi.advanceTimersByTimeAsync(100);
  saver.touch();
  const flushed = saver.flush();
  await vi.advanceTimersByTimeAsync(1000);
  await flushed;
  expect(most).toBe(1);
  expect(told).toEqual(['saved', 'saved']);
});

test('what failed is tried again after a while, and at once with the next change', async () => {
  const outcomes = [FAILED, FAILED, FAILED, SAVED];
  const { told, saver } = create(async () => outcomes.shift()!);
  saver.touch();
  await vi.advanceTimersByTimeAsync(0);
  expect(saver.isBehind()).toBe(true);
  await vi.advanceTimersByTimeAsync(RETRY);
  expect(told).toEqual(['failed', 'failed']);
  saver.touch();
  await vi.advanceTimersByTimeAsync(0);
  expect(told).toHaveLength(3);
  await vi.advanceTimersByTimeAsync(RETRY);
  expect(told).toEqual(['failed', 'failed', 'failed', 'saved']);
  expect(saver.isBehind()).toBe(false);
});

test('with nothing to save nothing is saved', async () => {
  const { told, saver } = create();
  await saver.flush();
  await vi.advanceTimersByTimeAsync(RETRY);
  saver.dispose();
  expect(told).toEqual([]);
});
