import { expect, test } from 'vitest';
import { layOutDial, listReadings } from '../../../src/drawing/kinds/dial-layout.ts';
import { createDial, DIALS } from '../../support/dial-cases.ts';

test('the circle grows with the page up to a size and never vanishes', () => {
  const radii = [60, 300, 700, 3000].map((width) => layOutDial(DIALS[0]![1], width).radius);
  expect(radii[0]).toBe(40);
  expect(radii[1]).toBeLessThan(radii[2]!);
  expect(radii[3]).toBe(150);
});

test('labels stand round the circle where there is room, else not', () => {
  const hours = Array.from({ length: 24 }, (_, i) => i / 2);
  expect(layOutDial(DIALS[0]![1], 390).labelled).toBe(true);
  expect(layOutDial(createDial(hours, hours), 300).labelled).toBe(false);
});

test('readings that are all the same have no scale and lie on the circle', () => {
  const { scale, points, radius, centre, wall } = layOutDial(
    createDial([12, 3, 6], [4, 4, 4]),
    500,
  );
  expect(scale).toBe(0);
  expect(wall).toEqual([]);
  for (const { at } of points)
    expect(Math.hypot(at[0] - centre[0], at[1] - centre[1])).toBeCloseTo(radius, 9);
});

test('with two positions there are points and no wall', () => {
  const layout = layOutDial(createDial([12, 6], [0, 4]), 500);
  expect(layout.points).toHaveLength(2);
  expect(layout.wall).toEqual([]);
});

test('readings without a position or a number are left out', () => {
  const data = createDial([12, 3, 6], [0, Number.NaN, 2, 3]);
  expect(listReadings(data).map(({ time }) => time)).toEqual(['12:00', '6:00']);
});
