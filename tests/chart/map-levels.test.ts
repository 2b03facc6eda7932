import { expect, test } from 'vitest';
import { listLevels, placesAt } from '../../src/chart/map-levels.ts';
import { makeMap } from './made-map.ts';

test('lines are drawn at round values inside the range', () => {
  expect(listLevels(makeMap())).toEqual([2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22]);
});

test('a result that is the same everywhere has no lines', () => {
  expect(listLevels(makeMap({ z: { label: 'Speed', unit: 'rpm', from: 5, to: 5 } }))).toEqual([]);
});

test('every place of a level comes to that level', () => {
  const places = placesAt(makeMap(), 12.5);
  expect(places.length).toBeGreaterThan(3);
  for (const [x, y] of places) expect(x + 10 * y).toBeCloseTo(12.5, 9);
});

test('where there is no value there is no place', () => {
  expect(placesAt(makeMap({ values: new Array(15).fill(Number.NaN) }), 12)).toEqual([]);
});
