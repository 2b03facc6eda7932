import { expect, test } from 'vitest';
import { createDrive, outsideDrive, refuseDrive } from '../../src/trade/drive-parameters.ts';
import type { Drive } from '../../src/trade/pull-line.ts';

const list = (...numbers: number[]) => Float64Array.from(numbers);
const DRIVE = createDrive([list(100, 500), list(200, 150)], 500, [150, 2, 0.04]);

test('a drive is made of curve, limit and start in that order', () => {
  expect(DRIVE).toEqual({
    speeds: list(100, 500),
    torques: list(200, 150),
    limit: 500,
    launchSpeed: 150,
    multiplication: 2,
    slip: 0.04,
  });
  expect(refuseDrive(DRIVE, list(10, 5))).toBeUndefined();
  expect(outsideDrive(DRIVE)).toBeUndefined();
});

test.each<[string, Partial<Drive>, readonly number[], RegExp]>([
  ['a curve without points', { speeds: list(), torques: list() }, [10], /no points/],
  ['a curve with a torque missing', { torques: list(200) }, [10], /2 speeds and 1 torques/],
  ['a curve listed from the top down', { speeds: list(500, 100) }, [10], /rise/],
  ['a curve that starts at a standstill', { speeds: list(0, 500) }, [10], /above 0/],
  ['a gearbox without gears', {}, [], /no gear/],
  ['a gear that turns backwards', {}, [10, -5], /above 0/],
  ['gears listed from the top down', {}, [5, 10], /1st gear first/],
  ['two gears alike', {}, [5, 5], /1st gear first/],
  ['a converter that slips all the way', { slip: 1 }, [10], /share from 0/],
  ['a converter that eats torque', { multiplication: 0.9 }, [10], /at least the torque/],
  ['an engine that may not turn', { limit: 0 }, [10], /above 0/],
])('%s is refused', (_, change, turns, sentence) => {
  expect(refuseDrive({ ...DRIVE, ...change }, list(...turns))).toMatch(sentence);
});

test('a converter that would give out more power than it takes is warned of', () => {
  expect(outsideDrive({ ...DRIVE, multiplication: 2.6 })).toMatch(/more power/);
});

test('a curve that ends before the limit is warned of', () => {
  expect(outsideDrive({ ...DRIVE, limit: 501 })).toMatch(/curve ends before the limit/);
});
