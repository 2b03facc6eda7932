import { expect, test } from 'vitest';
import { sayDowel, sayOffset, sayReadings } from '../../../src/drawing/kinds/dial-words.ts';
import { createDial, SHIFT } from '../../support/dial-cases.ts';

const dial = createDial([12, 4.5], [0, -2.5], SHIFT);
const bare = createDial([], []);

test('readings are said with their clock positions', () => {
  expect(sayReadings(dial)).toBe('Readings: 12:00 0.0 thou, 4:30 −2.5 thou');
  expect(sayReadings(bare)).toBe('There are no readings yet');
});

test('the bore’s centre is said to lie opposite the high side', () => {
  expect(sayOffset(dial)).toContain('10.0 thou from the crank’s axis, toward 10:00');
  expect(sayOffset(bare)).toBeUndefined();
});

test('dowels are said with the direction of their throw', () => {
  expect(sayDowel(dial)).toBe('Dowels of 7.0 thou, throw toward 4:00');
  expect(sayDowel(createDial([], [], { ...SHIFT, dowel: 0 }))).toBe('Plain dowels');
  expect(sayDowel(bare)).toBeUndefined();
});
