import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  type Dimension,
  divideDimensions,
  equalDimensions,
  isNone,
  multiplyDimensions,
  NONE,
  nameDimension,
  raiseDimension,
} from '../../src/units/dimension.ts';

const LENGTH: Dimension = [1, 0, 0, 0];
const TIME: Dimension = [0, 0, 1, 0];
const SPEED: Dimension = [1, 0, -1, 0];

const dimensions: fc.Arbitrary<Dimension> = fc.tuple(
  fc.integer({ min: -4, max: 4 }),
  fc.integer({ min: -4, max: 4 }),
  fc.integer({ min: -4, max: 4 }),
  fc.integer({ min: -4, max: 4 }),
);

test('a length over a time is a speed', () => {
  expect(divideDimensions(LENGTH, TIME)).toEqual(SPEED);
});

test('torque times turning speed is power, and torque is not energy', () => {
  const torque: Dimension = [2, 1, -2, -1];
  expect(nameDimension(multiplyDimensions(torque, [0, 0, -1, 1]))).toBe('power');
  expect(equalDimensions(torque, [2, 1, -2, 0])).toBe(false);
});

test('dividing undoes multiplying', () => {
  fc.assert(
    fc.property(dimensions, dimensions, (a, b) => {
      expect(divideDimensions(multiplyDimensions(a, b), b)).toEqual(a);
    }),
  );
});

test('a root undoes its power, and three thirds make a whole', () => {
  expect(raiseDimension(raiseDimension(SPEED, 1 / 3), 3)).toEqual(SPEED);
  const third = raiseDimension(LENGTH, 1 / 3);
  expect(multiplyDimensions(multiplyDimensions(third, third), third)).toEqual(LENGTH);
});

test('raising by 0 leaves a plain number, without minus zeros', () => {
  const plain = raiseDimension([-1, 0, 2, 0], 0);
  expect(isNone(plain)).toBe(true);
  expect(plain.map((exponent) => Object.is(exponent, -0))).not.toContain(true);
});

test.each<[string, Dimension]>([
  ['plain number', NONE],
  ['length', LENGTH],
  ['turning speed', [0, 0, -1, 1]],
  ['pressure', [-1, 1, -2, 0]],
  ['length per turn', [1, 0, 0, -1]],
  ['length^4', [4, 0, 0, 0]],
  ['length^2·mass/time', [2, 1, -1, 0]],
  ['1/mass', [0, -1, 0, 0]],
])('a dimension is called %s', (name, dimension) => {
  expect(nameDimension(dimension)).toBe(name);
});
