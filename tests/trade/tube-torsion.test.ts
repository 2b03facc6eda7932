import { expect, test } from 'vitest';
import {
  TUBE_SECOND_MOMENT,
  TUBE_SHEAR_STRESS,
  TUBE_TORQUE,
  TUBE_TWIST,
} from '../../src/trade/tube-torsion.ts';
import { refusalOf, runFunction } from '../support/run-function.ts';

const run = (...[declaration, ...values]: Parameters<typeof runFunction>) =>
  runFunction(declaration, ...values) as number;

test('the torque of a stress makes that stress', () => {
  const torque = run(TUBE_TORQUE, 1e8, 0.0762, 0.072);
  expect(run(TUBE_SHEAR_STRESS, torque, 0.0762, 0.072)).toBeCloseTo(1e8, 3);
});

test('a tube and the bar that was bored out of it are the whole bar', () => {
  const [tube, core] = [run(TUBE_SECOND_MOMENT, 0.08, 0.06), run(TUBE_SECOND_MOMENT, 0.06, 0)];
  expect(tube + core).toBeCloseTo(run(TUBE_SECOND_MOMENT, 0.08, 0), 18);
});

test('the outside is strained by twist times radius over length', () => {
  const twist = run(TUBE_TWIST, 700, 1.3, 80e9, 0.0762, 0.072);
  const stress = run(TUBE_SHEAR_STRESS, 700, 0.0762, 0.072);
  expect((twist * 0.0381) / 1.3).toBeCloseTo(stress / 80e9, 15);
});

test.each([
  ['no wall', 0.06, 0.06, 'smaller than its outside'],
  ['a bore below nought', 0.06, -0.01, 'not below 0'],
])('a tube with %s is refused', (_, outer, bore, words) => {
  expect(refusalOf(TUBE_SECOND_MOMENT, outer, bore)).toContain(words);
  expect(refusalOf(TUBE_SHEAR_STRESS, 100, outer, bore)).toContain(words);
  expect(refusalOf(TUBE_TORQUE, 1e8, outer, bore)).toContain(words);
  expect(refusalOf(TUBE_TWIST, 100, 1, 80e9, outer, bore)).toContain(words);
});

test('a shear modulus of nought is refused', () => {
  expect(refusalOf(TUBE_TWIST, 100, 1, 0, 0.06, 0.05)).toContain('above 0');
});

test('a wall that may buckle first is told', () => {
  expect(TUBE_SHEAR_STRESS.outside!(700, 0.0762, 0.072)).toBeUndefined();
  expect(TUBE_SHEAR_STRESS.outside!(700, 0.1, 0.098)).toContain('buckle');
  expect(TUBE_TORQUE.outside!(1e8, 0.1, 0.098)).toContain('buckle');
});
