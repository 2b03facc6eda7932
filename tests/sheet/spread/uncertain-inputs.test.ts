import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { listDoubts } from '../../../src/sheet/spread/uncertain-inputs.ts';
import { block, makeBook, makeSheet } from '../made-book.ts';

function doubtsOf(...givens: readonly string[]) {
  const made = makeSheet(block('given', ...givens) + block('work', 'y = p'));
  return listDoubts(made.book, made.frame, made.cell('y').index);
}

describe('a reading without doubt', () => {
  test.each([
    ['without a tolerance', 'p = 3'],
    ['with a tolerance of 0', 'p = 3 ± 0'],
    ['blank', 'p = blank'],
    ['of readings that are all the same', 'p = 3; 3; 3'],
    ['a list', 'p = [1, 2]'],
    ['words', 'p = "free"'],
  ])('%s', (_, given) => {
    expect(doubtsOf(given)).toEqual([]);
  });
});

test('limits are as likely anywhere between them: u is their half width over the root of 3', () => {
  const [doubt, ...others] = doubtsOf('p = 10 ± 0.3 mm');
  expect(others).toEqual([]);
  expect(doubt).toMatchObject({ shape: 'rectangular', shift: 0, dof: Number.POSITIVE_INFINITY });
  expect(doubt!.u).toBeCloseTo(0.0003 / Math.sqrt(3), 15);
  expect([doubt!.minus, doubt!.plus]).toEqual([expect.closeTo(3e-4, 12), expect.closeTo(3e-4, 12)]);
});

test('unequal limits have their middle beside the value', () => {
  const [doubt] = doubtsOf('p = 10 +0.5/-0.1');
  expect(doubt!.shift).toBeCloseTo(0.2, 12);
  expect(doubt!.u).toBeCloseTo(0.3 / Math.sqrt(3), 12);
  expect([doubt!.minus, doubt!.plus]).toEqual([0.1, 0.5]);
});

test('repeated readings have Student’s distribution, and lie no further than the furthest', () => {
  // Five readings of the GUM's kind, worked by hand: mean 2, s² = 2.5, u = √(2.5/5).
  const [doubt] = doubtsOf('p = 0; 1; 2; 3; 4');
  expect(doubt).toMatchObject({ shape: 'student', shift: 0, dof: 4, minus: 2, plus: 2 });
  expect(doubt!.u).toBeCloseTo(Math.sqrt(0.5), 12);
});

test('two readings have one degree of freedom', () => {
  expect(doubtsOf('p = 1; 3')).toMatchObject([{ dof: 1, u: 1 }]);
});

test('only what the result hangs on is listed, over sheets too, in the order of the book', () => {
  const made = makeBook({
    'a.md': block('given', 'p = 3 ± 1', 'q = 3 ± 1', 'r = 3 ± 1') + block('work', 'twice = p * 2'),
    'b.md':
      block('from a', 'twice', 'r') +
      block('given', 'own = 1 ± 1') +
      block('work', 'y = twice + r'),
  });
  const found = listDoubts(made.book, made.frame, made.cell('b/y').index);
  expect(found.map(({ cell }) => made.book.cells[cell]!.id)).toEqual(['a/p', 'a/r']);
});

test('an entry that cannot be read leaves nothing to doubt', () => {
  const made = makeSheet(block('given', 'p = 3 ± 1') + block('work', 'y = p'), { p: '3 ± x' });
  expect(listDoubts(made.book, made.frame, made.cell('y').index)).toEqual([]);
});

test('no doubt of any readings is below nothing', () => {
  const readings = fc.array(fc.integer({ min: -99, max: 99 }), { minLength: 2, maxLength: 6 });
  fc.assert(
    fc.property(readings, (numbers) => {
      for (const { u, minus, plus, dof } of doubtsOf(`p = ${numbers.join('; ')}`)) {
        expect(Math.min(u, minus, plus)).toBeGreaterThan(0);
        expect(dof).toBe(numbers.length - 1);
        expect(u).toBeLessThanOrEqual(minus + plus);
      }
    }),
    { numRuns: 50 },
  );
});
