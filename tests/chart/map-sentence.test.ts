import { expect, test } from 'vitest';
import { mapSentence, mapStanding } from '../../src/chart/map-sentence.ts';
import { makeMap } from './made-map.ts';

const say = (changes = {}) => mapSentence(makeMap(changes)).replaceAll('\u00a0', ' ');
const LEVELS = 'Lines at 2, 4, 6, 8, 10, 12, 14, 16, 18, 20 and 22 rpm.';

test('a map tells its axes, its ends, the job and its lines', () => {
  expect(say()).toBe(
    `Speed over axle from 0 to 4 and tyre from 0 in to 2 in. It is least, 0 rpm, at 0 and 0 in, and most, 24 rpm, at 4 and 2 in. The job stands at 1 and 1 in, with 11 rpm. ${LEVELS}`,
  );
});

test('a window tells how much of the map it takes up, and whether the job lies in it', () => {
  // Five of the fifteen places: 10 to 14.
  expect(say({ limits: [{ least: 10, most: 14, label: 'Usual' }] })).toContain(
    'Usual, 10 rpm to 14 rpm, takes up 33 % of the map, and the job lies in it.',
  );
  expect(say({ limits: [{ least: 12, most: 14, label: 'Usual' }] })).toContain('lies outside it');
});

test('a map without a job’s point, of one value, or of none says so', () => {
  expect(say({ now: undefined })).not.toContain('The job');
  expect(say({ z: { label: 'Speed', unit: 'rpm', from: 5, to: 5 } })).toContain(
    'It is 5 rpm throughout.',
  );
  expect(say({ values: new Array(15).fill(Number.NaN) })).toContain('no value anywhere');
});

test('beside other maps of its kind only its point and its windows are told', () => {
  const limits = [{ least: 4, most: 8, label: 'Usual' }];
  const told = mapStanding(makeMap({ limits })).replaceAll('\u00a0', ' ');
  expect(told).toMatch(/^The job stands at .* Usual, 4 rpm to 8 rpm, takes up /);
  expect(say({ limits })).toContain(told);
});
