import type { Book } from '../book.ts';
import type { Frame } from '../frame.ts';
import type { Reading } from '../reading.ts';
import { upstreamOf } from '../upstream.ts';

/**
 * One reason to doubt a given. Limits (a tolerance) are taken as rectangular: any value between them
 * is as likely as any other. Repeated readings give a mean with a Student distribution. A given with
 * both has two reasons.
 *
 * Source: JCGM 100 (GUM) 4.2 and 4.3.7; JCGM 101, 6.4.
 */
export interface Doubt {
  readonly cell: number;
  readonly shape: 'rectangular' | 'student';
  /** Middle of the distribution, less the given's value; not 0 for unequal limits. SI. */
  readonly shift: number;
  /** Standard uncertainty, SI. */
  readonly u: number;
  readonly dof: number;
  /** For the worst case: how far below and above the value it may lie. SI, 0 or more. */
  readonly minus: number;
  readonly plus: number;
}

/** The doubts of all givens that a result hangs on; givens without any are left out. */
export function listDoubts(book: Book, frame: Frame, result: number): readonly Doubt[] {
  const upstream = [...upstreamOf(book.cells, [result])].sort((a, b) => a - b);
  return upstream.flatMap((cell) => {
    const reading = book.cells[cell]!.role === 'given' ? frame.readings[cell] : undefined;
    return reading?.state === 'value' ? doubtsOf(cell, reading) : [];
  });
}

function doubtsOf(cell: number, reading: Extract<Reading, { state: 'value' }>): readonly Doubt[] {
  const { tolerance, readings } = reading;
  const found: Doubt[] = [];
  if (readings !== undefined && readings.length > 1) found.push(repeated(cell, readings));
  if (tolerance !== undefined) found.push(limits(cell, tolerance));
  return found.filter(({ u }) => u > 0);
}

function limits(cell: number, { minus, plus }: { minus: number; plus: number }): Doubt {
  const shift = (plus - minus) / 2;
  const u = (plus + minus) / (2 * Math.sqrt(3));
  return { cell, shape: 'rectangular', shift, u, dof: Number.POSITIVE_INFINITY, minus, plus };
}

/** The worst that readings tell of is how far the furthest of them lies from their mean. */
function repeated(cell: number, readings: readonly number[]): Doubt {
  const n = readings.length;
  const mean = readings.reduce((a, b) => a + b, 0) / n;
  const variance = readings.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (n - 1);
  return {
    cell,
    shape: 'student',
    shift: 0,
    u: Math.sqrt(variance / n),
    dof: n - 1,
    minus: mean - Math.min(...readings),
    plus: Math.max(...readings) - mean,
  };
}
