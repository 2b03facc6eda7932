import { expect, test } from 'vitest';
import { CLAMP_FOR_PRESSURE, LINING_PRESSURE } from '../../src/trade/lining-pressure.ts';
import { refusalOf, runFunction } from '../support/run-function.ts';

const pressure = (...values: number[]) => runFunction(LINING_PRESSURE, ...values) as number;
const clamp = (...values: number[]) => runFunction(CLAMP_FOR_PRESSURE, ...values) as number;

test('the clamp load that brings the inner edge to a pressure brings it there', () => {
  expect(pressure(clamp(2e5, 0.24, 0.16), 0.24, 0.16, 0.16)).toBeCloseTo(2e5, 6);
});

test('the pressure falls from the inner edge to the outer as the radius grows', () => {
  const [inner, outer] = [pressure(4000, 0.2, 0.1, 0.1), pressure(4000, 0.2, 0.1, 0.2)];
  expect(inner / outer).toBeCloseTo(2, 12);
});

test('added up over the lining the pressure is the clamp load', () => {
  const rings = 10_000;
  let force = 0;
  for (let i = 0; i < rings; i++) {
    const at = 0.1 + ((i + 0.5) * 0.1) / rings;
    force += pressure(4000, 0.2, 0.1, at) * Math.PI * at * (0.05 / rings);
  }
  expect(force).toBeCloseTo(4000, 6);
});

test('a place without lining has no pressure', () => {
  expect(refusalOf(LINING_PRESSURE, 4000, 0.2, 0.1, 0.25)).toContain('no lining at this diameter');
  expect(refusalOf(LINING_PRESSURE, 4000, 0.2, 0.1, 0.05)).toContain('no lining at this diameter');
  expect(refusalOf(LINING_PRESSURE, 4000, 0.2, 0, 0)).toContain('has no end');
  expect(refusalOf(CLAMP_FOR_PRESSURE, 2e5, 0.1, 0.2)).toContain('smaller than the outer');
});
