import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawProblem } from '../../../src/sheet/practice/draw-problem.ts';
import { outcomeOf } from '../../../src/sheet/solve.ts';
import { block, makeSheet } from '../made-book.ts';

const GIVENS = block(
  'given',
  'finger = 3.212 in from 3.1 in to 3.3 in to 0.005 as in',
  'bearing = 3.0 in',
  'edge = 0.25 in',
);
const WORK = block('work', 'gap = finger - bearing', 'root = sqrt(finger - 3.2 in)^2 / (1 in)^0');
const ASK = 'ask gap within 0.001 in "How wide is the gap?"';

function deal(seed: number, lines: readonly string[] = [ASK], givens = GIVENS, work = WORK) {
  const made = makeSheet(givens + work + block('practice "The gap"', ...lines));
  expect(made.book.problems).toEqual([]);
  const linked = made.book.practices[0]!.linked!;
  return { ...made, problem: drawProblem(made.book, made.frame, linked, seed) };
}
const dealt = (seed: number, ...lines: readonly string[]) => deal(seed, [ASK, ...lines]).problem!;
const inches = ({ numbers }: { readonly numbers: readonly { readonly value: number }[] }) =>
  numbers.map(({ value }) => value / 0.0254);

test('the same seed deals the same numbers, another one others', () => {
  expect(dealt(7).numbers).toEqual(dealt(7).numbers);
  const several = new Set(Array.from({ length: 40 }, (_, seed) => dealt(seed).numbers[0]!.value));
  expect(several.size).toBeGreaterThan(15);
});

test('the answer is worked from the numbers dealt, on a copy of the sheet', () => {
  const { problem, frame, cell, book } = deal(3);
  const before = structuredClone(frame);
  const [finger] = inches(problem!);
  expect(problem!.answer / 0.0254).toBeCloseTo(finger! - 3, 9);
  expect(problem!.within).toBeCloseTo(0.0000254, 12);
  expect(outcomeOf(book, problem!.frame, cell('gap').index)).toEqual({
    state: 'value',
    value: problem!.answer,
  });
  expect(frame).toEqual(before);
});

describe('numbers', () => {
  const dealing = (vary: string) =>
    Array.from({ length: 200 }, (_, seed) => inches(dealt(seed, vary))[0]!);

  test.each([
    ['vary finger', 0.005, 3.1, 3.3],
    ['vary finger from 3.101 in to 3.299 in', 0.005, 3.105, 3.295],
    ['vary bearing from 2 1/16 in to 2 1/2 in to 0.1', 0.1, 2.1, 2.5],
    ['vary bearing from 2 1/16 in to 2 1/4 in to 1/64', 1 / 64, 2.0625, 2.25],
    ['vary bearing from -0.25 in to 0.25 in to 0.1', 0.1, -0.2, 0.2],
  ])('%s: whole steps of %d, from %d to %d, both ends among them', (vary, step, least, most) => {
    const found = dealing(vary);
    for (const number of found) expect(number / step).toBeCloseTo(Math.round(number / step), 6);
    expect([Math.min(...found), Math.max(...found)]).toEqual([
      expect.closeTo(least, 9),
      expect.closeTo(most, 9),
    ]);
  });

  test('a given without a resolution is dealt in fortieths of its range', () => {
    for (const number of dealing('vary bearing from 2 in to 4 in')) {
      const steps = (number - 2) * 20;
      expect(steps).toBeCloseTo(Math.round(steps), 6);
    }
  });

  test('a range narrower than its step deals its lower end', () => {
    expect(new Set(dealing('vary bearing from 2.02 in to 2.03 in to 0.1'))).toHaveLength(1);
  });

  test('a given that is blank is filled in', () => {
    const { problem } = deal(1, [ASK], GIVENS.replace('finger = 3.212 in', 'finger = blank in'));
    expect(Number.isFinite(problem!.answer)).toBe(true);
  });
});

describe('a question is worth asking', () => {
  test('where a mistake would not show, other numbers are dealt', () => {
    // With the same numbers for both, subtracting and dividing by one another come to the same.
    for (let seed = 0; seed < 50; seed += 1) {
      const { answer, mistakes, within } = dealt(
        seed,
        'vary finger',
        'mistake 0.2 in "Always a fifth of an inch."',
      );
      expect(Math.abs(mistakes[0]! - answer)).toBeGreaterThan(2 * within);
    }
  });

  test('an answer of nothing is not asked for, since its sign could not be wrong', () => {
    for (let seed = 0; seed < 50; seed += 1) {
      const { answer, within } = dealt(seed, 'vary finger from 2.99 in to 3.01 in');
      expect(Math.abs(answer)).toBeGreaterThan(within);
    }
  });

  test('numbers without an answer are dealt again', () => {
    for (let seed = 0; seed < 30; seed += 1) {
      const { problem } = deal(seed, ['ask root within 0.001 in "How much?"', 'vary finger']);
      expect(inches(problem!)[0]).toBeGreaterThan(3.2);
    }
  });

  test('a mistake that leads nowhere is no hindrance', () => {
    const { mistakes } = dealt(1, 'vary finger', 'mistake gap * sqrt(-1) "Nowhere."');
    expect(mistakes).toEqual([Number.NaN]);
  });

  test('where a mistake never shows, the question is asked all the same', () => {
    expect(dealt(1, 'vary finger', 'mistake gap "It is the same."')).toBeDefined();
  });
});

describe('no question', () => {
  test.each([
    [
      'where no numbers have an answer',
      ['ask root within 0.001 in "How much?"', 'vary finger from 3.1 in to 3.15 in'],
    ],
    [
      'where nothing is near enough to be right',
      ['ask gap within 0 in "How wide?"', 'vary finger'],
    ],
  ])('%s', (_, lines) => {
    expect(deal(1, lines).problem).toBeUndefined();
  });
});

test('any seed deals numbers inside of their ranges', () => {
  const seed = fc.oneof(fc.nat(), fc.integer(), fc.constant(2 ** 31), fc.constant(2 ** 40 + 1));
  fc.assert(
    fc.property(seed, (any) => {
      const [finger] = inches(dealt(any));
      expect(finger).toBeGreaterThanOrEqual(3.1 - 1e-9);
      expect(finger).toBeLessThanOrEqual(3.3 + 1e-9);
    }),
    { numRuns: 60 },
  );
});
