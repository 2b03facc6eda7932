import { expect, test } from 'vitest';
import { SLIP_END_SPEED, SLIP_ENERGY, SLIP_TIME } from '../../src/trade/clutch-slip.ts';
import { refusalOf, runFunction } from '../support/run-function.ts';

const [DRIVING, DRIVEN, SPEED, TORQUE] = [0.2, 1.3, 190, 280];
const end = runFunction(SLIP_END_SPEED, DRIVING, DRIVEN, SPEED) as number;
const time = runFunction(SLIP_TIME, DRIVING, DRIVEN, SPEED, TORQUE) as number;
const heat = runFunction(SLIP_ENERGY, DRIVING, DRIVEN, SPEED) as number;

test('one side slows and the other gathers speed until they meet', () => {
  expect(SPEED - (TORQUE / DRIVING) * time).toBeCloseTo(end, 9);
  expect((TORQUE / DRIVEN) * time).toBeCloseTo(end, 9);
});

test('the heat is what is missing of the motion', () => {
  const before = (DRIVING * SPEED ** 2) / 2;
  const after = ((DRIVING + DRIVEN) * end ** 2) / 2;
  expect(heat).toBeCloseTo(before - after, 9);
});

test('clamped harder it slips shorter, and heats as much', () => {
  const half = runFunction(SLIP_TIME, DRIVING, DRIVEN, SPEED, 2 * TORQUE) as number;
  expect(half).toBeCloseTo(time / 2, 12);
});

test.each([
  ['an engine of nothing', 0, 1],
  ['a car of nothing', 1, 0],
  ['less than nothing', -1, 2],
])('%s is refused', (_, driving, driven) => {
  expect(refusalOf(SLIP_END_SPEED, driving, driven, 100)).toContain('above 0');
  expect(refusalOf(SLIP_TIME, driving, driven, 100, 10)).toContain('above 0');
  expect(refusalOf(SLIP_ENERGY, driving, driven, 100)).toContain('above 0');
});

test('without torque it never ends', () => {
  expect(refusalOf(SLIP_TIME, 1, 1, 100, 0)).toContain('for ever');
});
