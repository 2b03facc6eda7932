import { expect, test } from 'vitest';
import type { Found } from '../../../src/sheet/find/find-given.ts';
import { describeFound, describeRows } from '../../../src/sheet/find/find-words.ts';

const SHOW = {
  given: (value: number) => `${value}`,
  result: (value: number) => `${value} rpm`,
  givenName: 'axle ratio',
  resultName: 'cruise',
};

const FOUND: Found = {
  target: 2000,
  moves: false,
  from: 2,
  to: 5,
  solutions: [],
  closest: { given: 3, result: 2100, target: 2000 },
  depends: true,
  stocked: [],
};
const one = (place: number) => ({ from: place, to: place });

test.each([
  ['one answer', { solutions: [one(3)] }, 'Axle ratio 3 gives cruise 2000 rpm.'],
  [
    'two answers',
    { solutions: [one(3), one(4)] },
    'Axle ratio 3 or 4 gives cruise 2000 rpm (2 answers).',
  ],
  [
    'three answers',
    { solutions: [one(2), one(3), one(4)] },
    'Axle ratio 2, 3 or 4 gives cruise 2000 rpm (3 answers).',
  ],
  [
    'a stretch',
    { solutions: [{ from: 2, to: 3 }] },
    'Axle ratio anything from 2 to 3 gives cruise 2000 rpm.',
  ],
  [
    'no answer',
    {},
    'Nothing between 2 and 5 gives cruise 2000 rpm; nearest is 3, which gives 2100 rpm.',
  ],
  [
    'a result that stays',
    { depends: false },
    'Cruise does not depend on axle ratio: it is 2100 rpm throughout.',
  ],
  ['no target', { target: undefined }, 'There is no target yet.'],
  ['no value', { closest: undefined }, 'Cruise has no value anywhere between 2 and 5.'],
  [
    'a target that moves',
    { moves: true, solutions: [one(3)] },
    'Axle ratio 3 gives cruise equal to the target.',
  ],
  [
    'a target that moves and is not met',
    { moves: true, target: undefined },
    'Nothing between 2 and 5 gives cruise equal to the target; nearest is 3, which gives 2100 rpm against 2000 rpm.',
  ],
])('%s', (_, more, words) => {
  expect(describeFound({ ...FOUND, ...more }, SHOW)).toBe(words);
});

test('a target that moves is called by its name where it has one', () => {
  const found = { ...FOUND, moves: true, solutions: [one(3)] };
  expect(describeFound(found, { ...SHOW, targetName: 'road load' })).toBe(
    'Axle ratio 3 gives cruise equal to road load.',
  );
});

test.each([
  [
    [
      { row: 'Short', result: 1900 },
      { row: 'Long', result: 2500 },
    ],
    'Of the table, Short comes nearest to cruise 2000 rpm: it gives 1900 rpm.',
  ],
  [[{ row: 'Short', result: Number.NaN }], 'No row of its table gives cruise a value.'],
  [[], 'No row of its table gives cruise a value.'],
])('rows %j', (rows, words) => {
  expect(describeRows(rows, 2000, SHOW)).toBe(words);
});
