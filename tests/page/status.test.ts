import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createStatus, STILLNESS } from '../../src/page/status.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

test('the page speaks once it has been still', () => {
  const status = createStatus();
  status.tell(() => 'gap 0.165 in');
  vi.advanceTimersByTime(STILLNESS - 1);
  expect(status.element.textContent).toBe('');
  vi.advanceTimersByTime(1);
  expect(status.element.textContent).toBe('gap 0.165 in');
});

test('of many changes only the last is told', () => {
  const status = createStatus();
  const asked: string[] = [];
  for (const words of ['a', 'b', 'c']) {
    status.tell(() => `${asked.push(words)} ${words}`);
    vi.advanceTimersByTime(100);
  }
  vi.advanceTimersByTime(STILLNESS);
  expect(asked).toEqual(['c']);
});

test('it is one polite region', () => {
  const { element } = createStatus();
  expect(element.getAttribute('aria-live')).toBe('polite');
  expect(element.getAttribute('role')).toBe('status');
});

test('a page that is closed says nothing more', () => {
  const status = createStatus();
  status.tell(() => 'late');
  status.dispose();
  vi.advanceTimersByTime(STILLNESS);
  expect(status.element.textContent).toBe('');
});

test('words that come late are told, unless something has changed in between', async () => {
  const status = createStatus();
  status.tell(async () => 'first');
  await vi.advanceTimersByTimeAsync(STILLNESS);
  expect(status.element.textContent).toBe('first');
  let say = (_: string): void => {};
  status.tell(
    () =>
      new Promise((resolve) => {
        say = resolve;
      }),
  );
  await vi.advanceTimersByTimeAsync(STILLNESS);
  status.tell(() => 'last');
  say('too late');
  await vi.advanceTimersByTimeAsync(1);
  expect(status.element.textContent).toBe('first');
  await vi.advanceTimersByTimeAsync(STILLNESS);
  expect(status.element.textContent).toBe('last');
});
