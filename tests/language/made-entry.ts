import { expect } from 'vitest';
import { type EntryReading, type Expected, readEntry } from '../../src/language/entry.ts';
import type { Problem } from '../../src/language/problem.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';

export type ReadValue = Extract<EntryReading, { state: 'value' }>;

/** A field that takes a quantity, or a list, and reads bare numbers in this unit. '' is a plain number. */
export function field(symbol: string, type: 'quantity' | 'list' = 'quantity'): Expected {
  const unit = parseUnit(symbol);
  if (unit === undefined) return { kind: { type, dimension: [0, 0, 0, 0] } };
  return { kind: { type, dimension: unit.dimension }, unit };
}

export function expectValue(text: string, expected: Expected): ReadValue {
  const reading = readEntry(text, expected);
  expect(reading, text).toMatchObject({ state: 'value' });
  return reading as ReadValue;
}

export function expectProblem(text: string, expected: Expected): Problem {
  const reading = readEntry(text, expected);
  expect(reading, text).toMatchObject({ state: 'failed' });
  return (reading as Extract<EntryReading, { state: 'failed' }>).problem;
}
