import { describe, expect, test } from 'vitest';
import { HEAVIEST_SHARE, RELIEVED, WEAKEST_LINK } from '../../src/trade/weakest-link.ts';
import { refusalOf, runFunction } from '../support/run-function.ts';

const NAMES = ['clutch', 'tube', 'axle'];
const SHARES = [
  Float64Array.of(0.7, 0.8, 0.9),
  Float64Array.of(0.9, 0.5, 0.9),
  Float64Array.of(0.8, 0.9, 0.1),
];

describe('the weakest link', () => {
  test('is named for each case, of equals the first', () => {
    expect(runFunction(WEAKEST_LINK, NAMES, ...SHARES)).toEqual(['tube', 'axle', 'clutch']);
  });

  test('has its share told for each case', () => {
    expect(runFunction(HEAVIEST_SHARE, ...SHARES)).toEqual(Float64Array.of(0.9, 0.9, 0.9));
  });

  test('of no cases is none', () => {
    expect(runFunction(WEAKEST_LINK, ['a'], new Float64Array())).toEqual([]);
  });

  test('needs a name for each list', () => {
    expect(refusalOf(WEAKEST_LINK, NAMES, ...SHARES.slice(1))).toContain(
      '3 names do not go with 2',
    );
  });

  test('needs lists of one length', () => {
    const lists = [Float64Array.of(1), Float64Array.of(1, 2)];
    expect(refusalOf(WEAKEST_LINK, ['a', 'b'], ...lists)).toContain('not equally long');
    expect(refusalOf(HEAVIEST_SHARE, ...lists)).toContain('not equally long');
  });
});

test('what slips passes on no more than its limit', () => {
  expect(runFunction(RELIEVED, 500, 400)).toBe(400);
  expect(runFunction(RELIEVED, 300, 400)).toBe(300);
  expect(runFunction(RELIEVED, 400, 400)).toBe(400);
});
