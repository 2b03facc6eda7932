import { expect, test } from 'vitest';
import { footOf, layOutGauge } from '../../src/drawing/gauge-layout.ts';
import { GAUGES } from '../support/drawing-cases.ts';

const least = { value: 10, text: '10 mm' };
const most = { value: 20, text: '20 mm' };
const values = [{ value: 15, text: '15 mm' }];

test('limits and value stand on one scale', () => {
  const { limits, pointers, bar } = layOutGauge({ title: '', least, most, values }, 482);
  // The scale runs from 3 to 27 over the 480 px of the bar.
  expect(bar).toMatchObject({ x: 1, width: 480 });
  expect(limits.map(({ x }) => x)).toEqual([141, 341]);
  expect(pointers[0]?.x).toBe(241);
});

test('the window is clear between the limits, and to the end where there is none', () => {
  const clear = (data: object) => layOutGauge({ title: '', values, ...data }, 482).clear;
  expect(clear({ least, most })).toEqual({ from: 141, to: 341 });
  expect(clear({ least })).toEqual({ from: 241, to: 481 });
  expect(clear({ most })).toEqual({ from: 1, to: 241 });
  expect(clear({ least: most, most: least })).toBeUndefined();
});

test('a value off the scale says so beside its number', () => {
  const far = layOutGauge({ title: '', least, most, values: [{ value: 99, text: '99 mm' }] }, 482);
  expect(far.pointers[0]).toMatchObject({ x: 481, off: 'right' });
  expect(far.pointers[0]?.letters.lines).toEqual(['99 mm, off the scale']);
});

test('what a side means stands under it where there is room, else as a caption', () => {
  const data = { title: '', least, most, values, below: 'It rides the bearing and slips.' };
  expect(layOutGauge(data, 700).words[0]?.letters.lines[0]).toMatch(/^It rides/);
  expect(layOutGauge(data, 240).words[0]?.letters.lines[0]).toMatch(/^Below 10 mm/);
});

test('the failing side is known', () => {
  const low = layOutGauge({ title: '', least, most, values: [{ value: 5, text: '5' }] }, 482);
  expect(low.pointers[0]?.side).toBe('below');
});

test.each(GAUGES)('%s: the height holds all lettering', (_, data) => {
  for (const width of [240, 300, 700]) {
    const { height, words, notes, limits } = layOutGauge(data, width);
    const feet = [...words, ...limits].map(({ letters }) => footOf(letters));
    expect(Math.max(0, ...feet, ...notes.map(footOf))).toBeLessThanOrEqual(height);
  }
});
