import { expect, test } from 'vitest';
import { createMemory } from '../../src/language/memory.ts';

test('new memory holds no value and no blank', () => {
  const { numbers, others, blanks } = createMemory(2);
  expect([...numbers]).toEqual([Number.NaN, Number.NaN]);
  expect(others).toEqual([undefined, undefined]);
  expect([...blanks]).toEqual([0, 0]);
});

test('memory for no cells', () => {
  expect(createMemory(0).others).toEqual([]);
});

test('the constants stand behind the numbers of the cells', () => {
  const { numbers, others } = createMemory(1, [2, 0.5]);
  expect([...numbers]).toEqual([Number.NaN, 2, 0.5]);
  expect(others).toHaveLength(1);
});
