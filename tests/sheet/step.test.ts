import { expect, test } from 'vitest';
import { createMemory } from '../../src/language/memory.ts';
import { linkBook } from '../../src/sheet/book.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import { createSteps, workCell } from '../../src/sheet/step.ts';

const F = '```';
const A = `${F}given
x = 3
${F}
${F}work
twice = x * 2
huge = 1e308 * x * 2
each = [1, 2] * x
gap = [1, 1 / x]
wrong = x + 1 in
${F}
`;
const B = `${F}from a
twice
x as y
${F}
`;

const BOOK = linkBook([readSheet(A, 'a.md'), readSheet(B, 'b.md')]);
const STEPS = createSteps(BOOK.cells, BOOK.order);

function workAll(x: number) {
  const memory = createMemory(BOOK.cells.length);
  memory.numbers[BOOK.find('a', 'x')!.index] = x;
  for (const index of BOOK.order) workCell(STEPS, memory, index);
  return {
    number: (name: string, sheet = 'a') => memory.numbers[BOOK.find(sheet, name)!.index],
    other: (name: string) => memory.others[BOOK.find('a', name)!.index],
  };
}

test('a formula leaves its value where its kind has its place', () => {
  expect(workAll(3).number('twice')).toBe(6);
  expect(workAll(3).other('each')).toEqual(Float64Array.of(3, 6));
});

test('a value is carried from sheet to sheet', () => {
  expect(workAll(3).number('twice', 'b')).toBe(6);
  expect(workAll(3).number('y', 'b')).toBe(3);
});

test('an overflow is no value', () => {
  expect(workAll(3).number('huge')).toBeNaN();
});

test('a list with a gap in it is no value', () => {
  expect(workAll(0).other('gap')).toBeUndefined();
});

test('a given and a formula that is wrong leave the memory as it was', () => {
  expect(workAll(3).number('x')).toBe(3);
  expect(workAll(3).number('wrong')).toBeNaN();
});
