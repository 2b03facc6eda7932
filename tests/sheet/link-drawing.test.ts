import { describe, expect, test } from 'vitest';
import { block, makeSheet } from './made-book.ts';

const GIVENS = block(
  'given',
  'readings = [1, 2] thou to 0.1',
  'angles = [0, 90] deg',
  'offset = 3 mm to 0.01',
  'open = blank mm',
);

function link(...lines: readonly string[]) {
  const { book } = makeSheet(
    GIVENS + block('drawing dial "Round the bore"', 'angles = angles', ...lines),
  );
  return book.drawings[0]!;
}

test('each slot is bound to its formula, and knows what it is of the drawing', () => {
  const { linked } = link('readings = 2 * readings', 'offset = offset');
  expect(linked!.plan.name).toBe('dial');
  expect(linked!.slots.map(({ slot }) => slot.name)).toEqual(['angles', 'readings', 'offset']);
});

describe('a slot is shown', () => {
  test.each([
    ['as the value that it names', 'offset = offset', { resolution: 0.01, unit: { symbol: 'mm' } }],
    ['in the usual unit, where it is a formula', 'offset = 2 * offset', { unit: { symbol: 'mm' } }],
  ])('%s', (_, line, display) => {
    const { linked } = link('readings = readings', line);
    expect(linked!.slots.at(-1)!.display).toMatchObject(display);
  });
});

test('what a drawing can do without may be left out, or blank', () => {
  expect(link('readings = readings').linked).toBeDefined();
  expect(link('readings = readings', 'offset = open').linked).toBeDefined();
});

test('a drawing that cannot be linked has its problem, at its place', () => {
  expect(link('readings = angles')).toMatchObject({
    problem: { code: 'wrong-kind', place: { line: 9, column: 12 } },
  });
});
