import { describe, expect, test } from 'vitest';
import {
  finite,
  listCode,
  listSlotCode,
  numberCode,
  otherCode,
  slotCode,
} from '../../src/language/code.ts';
import { createMemory } from '../../src/language/memory.ts';

describe('finite', () => {
  test.each([0, -0, 1e308, -2.5, Number.MIN_VALUE])('%d is itself', (x) => {
    expect(finite(x)).toBe(x);
  });

  test.each([Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NaN])('%d is none', (x) => {
    expect(finite(x)).toBeNaN();
  });
});

test('code carries what it gives in its type', () => {
  const memory = createMemory(0);
  const codes = [numberCode(() => 3), listCode(() => Float64Array.of(3)), otherCode(() => 'three')];
  expect(codes.map(({ type }) => type)).toEqual(['number', 'list', 'other']);
  expect(codes.map(({ run }) => run(memory))).toEqual([3, Float64Array.of(3), 'three']);
});

test('code for a place of the memory gives what stands there, and tells that it does', () => {
  const memory = createMemory(2);
  memory.numbers[1] = 5;
  memory.others[1] = Float64Array.of(1, 2);
  expect(slotCode(1)).toMatchObject({ slot: 1 });
  expect(slotCode(1).run(memory)).toBe(5);
  expect(listSlotCode(1)).toMatchObject({ fresh: false });
  expect(listSlotCode(1).run(memory)).toBe(memory.others[1]);
  expect(listSlotCode(0).run(memory)).toBeUndefined();
});
