import { expect } from 'vitest';
import { outcomeOf } from '../../src/sheet/solve.ts';
import { cellIndex, openText, type Worked, work } from './notebooks.ts';

/** A sheet made of these formulas, worked; it is called `made`. */
export function workLines(lines: readonly string[]): Worked {
  return work(openText(['```work', ...lines, '```', ''].join('\n')), 'made');
}

/** Holds where two formulas give the same value: numbers to 1e-12 of their size, the rest exactly. */
export function expectSameFormulas(left: string, right: string): void {
  const worked = workLines([`left = ${left}`, `right = ${right}`]);
  expect(worked.book.problems).toEqual([]);
  expectSame(resultOf(worked, 'left'), resultOf(worked, 'right'));
}

/** The value of a cell of the sheet `made`; what became of it where it has none. */
export function resultOf({ book, frame }: Worked, name: string): unknown {
  const outcome = outcomeOf(book, frame, cellIndex(book, 'made', name));
  return outcome.state === 'value' ? outcome.value : outcome;
}

export function expectSame(left: unknown, right: unknown): void {
  if (typeof left === 'number' && typeof right === 'number') {
    expect(Math.abs(left - right)).toBeLessThanOrEqual(1e-12 * Math.abs(right));
    return;
  }
  if (left instanceof Float64Array && right instanceof Float64Array) {
    expect(left).toHaveLength(right.length);
    left.forEach((number, i) => {
      expectSame(number, right[i]);
    });
    return;
  }
  expect(left).toEqual(right);
}
