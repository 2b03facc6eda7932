import { describe, expect, test } from 'vitest';
import { whirl } from '../../src/trade/critical-speed.ts';
import { LOADED_SHAFT_SPEED } from '../../src/trade/loaded-shaft.ts';
import { SHAFT_DEFLECTION } from '../../src/trade/shaft-deflection.ts';
import { refusalOf } from '../support/run-function.ts';

const { work, outside } = LOADED_SHAFT_SPEED;
const list = (...numbers: number[]) => Float64Array.from(numbers);
const speed = (loads: Float64Array, deflections: Float64Array) =>
  work.type === 'whole' ? (work.run(loads, deflections) as number) : Number.NaN;

/** A solid steel shaft of 40 mm and 1 m, cut into pieces of equal weight. */
function lump(pieces: number): number {
  const [modulus, density, area] = [200e9, 7850, Math.PI * 0.02 ** 2];
  const second = (Math.PI / 64) * 0.04 ** 4;
  const places = Array.from({ length: pieces }, (_, i) => (i + 0.5) / pieces);
  const load = (density * area * 9.80665) / pieces;
  const bend = SHAFT_DEFLECTION.work;
  if (bend.type !== 'each') throw new Error('not element by element');
  const deflections = places.map((place) =>
    places.reduce((sum, at) => sum + bend.run(load, at, place, 1, modulus, second), 0),
  );
  return speed(
    Float64Array.from(places, () => load),
    Float64Array.from(deflections),
  );
}

describe('the whirl of a loaded shaft', () => {
  const right = whirl(0.04, 0, 1, 200e9, 7850);

  test('with all its mass in the middle comes out at 0.70 of the right speed', () => {
    expect(lump(1) / right).toBeCloseTo(Math.sqrt(48 / Math.PI ** 4), 10);
    expect(lump(1) / right).toBeCloseTo(0.702, 3);
  });

  test('comes to the right speed as the mass is spread', () => {
    expect(lump(3) / right).toBeCloseTo(1, 1);
    expect(lump(40) / right).toBeCloseTo(1.0007, 3);
  });

  test('does not ask how heavy the loads are, only how far they bend it', () => {
    expect(speed(list(3, 5), list(1e-3, 1e-3))).toBeCloseTo(Math.sqrt(9806.65), 9);
  });
});

test.each([
  ['lists of two lengths', list(1, 2), list(1), '2 loads do not go with 1 deflections'],
  ['no loads', list(), list(), 'at least one load'],
  ['a load of nought', list(0), list(1), 'above 0'],
  ['a shaft that does not bend', list(1), list(0), 'above 0'],
])('%s are refused', (_, loads, deflections, why) => {
  expect(refusalOf(LOADED_SHAFT_SPEED, loads, deflections)).toContain(why);
});

test('one load is doubted, since a tube’s own mass is no load', () => {
  expect(refusalOf(LOADED_SHAFT_SPEED, list(1), list(1))).toBeUndefined();
  expect(outside!(list(1))).toContain('0.70');
  expect(outside!(list(1, 2))).toBeUndefined();
});
