import { expect, test } from 'vitest';
import { createGaugeScale, placeOnScale } from '../../src/drawing/gauge-scale.ts';

const limit = (value: number) => ({ value, text: String(value) });
const values = (...numbers: number[]) => numbers.map(limit);

test('with two limits the scale hangs on the window, not on the values', () => {
  const data = { title: '', least: limit(10), most: limit(20) };
  expect(createGaugeScale({ ...data, values: values(15) })).toEqual({ from: 3, to: 27 });
  expect(createGaugeScale({ ...data, values: values(1e6) })).toEqual({ from: 3, to: 27 });
});

test('with one limit it stands in the middle and near values are on the scale', () => {
  const scale = createGaugeScale({ title: '', least: limit(10), values: values(18) });
  expect((scale.from + scale.to) / 2).toBeCloseTo(10);
  expect(scale.to).toBeGreaterThan(18);
});

test.each([
  ['limits at one point', { least: limit(5), most: limit(5), values: values(5) }],
  ['a limit of nought', { least: limit(0), values: values(0) }],
  ['no limits', { values: values(3) }],
  ['nothing at all', { values: [] }],
  ['a limit that is not known', { least: limit(Number.NaN), values: values(2) }],
  ['a value that is not known', { most: limit(4), values: values(Number.NaN) }],
])('%s still makes a scale of some length', (_, data) => {
  const { from, to } = createGaugeScale({ title: '', ...data });
  expect(to).toBeGreaterThan(from);
});

test('a value stands to scale; beyond the ends it is off', () => {
  const [scale, bar] = [
    { from: 0, to: 10 },
    { x: 1, width: 100 },
  ];
  expect(placeOnScale(scale, 2.5, bar)).toEqual({ x: 26 });
  expect(placeOnScale(scale, -1, bar)).toEqual({ x: 1, off: 'left' });
  expect(placeOnScale(scale, 11, bar)).toEqual({ x: 101, off: 'right' });
});
