import { expect, test } from 'vitest';
import { addTolerances } from '../../../src/sheet/spread/stack-methods.ts';
import { block, makeSheet } from '../made-book.ts';

const INCH = 0.0254;

function methods(...readings: readonly string[]) {
  const names = readings.map((_, i) => `+ part_${i}`);
  const made = makeSheet(
    [
      block('given', ...readings.map((reading, i) => `part_${i} = ${reading}`)),
      block('stack whole "Whole" as in to 0.001', ...names),
    ].join('\n'),
  );
  return addTolerances(made.book, made.frame, made.cell('whole').index).map(
    ({ method, from, to }) => [method, from / INCH, to / INCH] as const,
  );
}

test('tolerances are added up at worst, by their squares, and by drawing them', () => {
  // By hand: 0.003 + 0.004 = 0.007; √(0.003² + 0.004²) = 0.005; the sum of two rectangles of these
  // widths holds 95 % within 0.00545: (0.007 − t)² / (8 × 0.003 × 0.004) = 0.025.
  const [worst, squares, simulated] = methods('1 ± 0.003 in', '2 ± 0.004 in');
  expect(worst).toEqual(['worst', expect.closeTo(2.993, 9), expect.closeTo(3.007, 9)]);
  expect(squares).toEqual(['squares', expect.closeTo(2.995, 9), expect.closeTo(3.005, 9)]);
  expect(simulated![0]).toBe('simulated');
  expect(simulated![2] - simulated![1]).toBeCloseTo(2 * 0.00545, 3);
});

test('one tolerance alone is the same at worst and by its square', () => {
  const [worst, squares] = methods('1 ± 0.003 in');
  expect(squares!.slice(1)).toEqual(worst!.slice(1).map((end) => expect.closeTo(end as number, 9)));
});

test('repeated readings count by how far they lie apart, and are drawn further than that', () => {
  // By hand: readings 1.000, 1.003 and 1.006: 0.003 either way of their mean.
  const [worst, squares, simulated] = methods('1.000; 1.003; 1.006 in');
  expect(worst).toEqual(['worst', expect.closeTo(1, 9), expect.closeTo(1.006, 9)]);
  expect(squares).toEqual(['squares', expect.closeTo(1, 9), expect.closeTo(1.006, 9)]);
  // u = 0.003 / √3, two degrees of freedom: 4.303 u = 0.00745.
  expect(simulated![2] - simulated![1]).toBeCloseTo(2 * 0.00745, 2);
  expect(simulated![2]).toBeGreaterThan(1.007);
});

test('a stack in which nothing is in doubt has nothing to add up', () => {
  expect(methods('1 in', '2 in')).toEqual([]);
});
