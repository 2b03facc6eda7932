import { expect, test } from 'vitest';
import { ONE_PART, TWO_FACES } from '../../src/drawing/datum-kinds.ts';

test('a kind either runs to a second face or is of one part', () => {
  const all: readonly string[] = [...TWO_FACES, ...ONE_PART];
  expect(new Set(all).size).toBe(all.length);
});
