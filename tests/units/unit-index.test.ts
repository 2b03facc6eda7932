import { expect, test } from 'vitest';
import { findMark, findUnit, SPELLINGS } from '../../src/units/unit-index.ts';

test.each([
  ['in', 'in'],
  ['inches', 'in'],
  ['kph', 'km/h'],
  ['rev/min', 'rpm'],
  ['ft-lb', 'lbf·ft'],
  ['RPM', 'rpm'],
  ['PSI', 'psi'],
  ['MM', 'mm'],
])('%s is found as %s', (spelling, symbol) => {
  expect(findUnit(spelling)?.symbol).toBe(symbol);
});

test.each(['M', 'G', 'S', 'mpa', 'Mm', 'furlong', '', 'constructor'])(
  '%j is no unit',
  (spelling) => {
    expect(findUnit(spelling)).toBeUndefined();
  },
);

test('marks are found apart from words', () => {
  expect([`"`, '″', `'`, '’'].map((mark) => findMark(mark)?.symbol)).toEqual([
    'in',
    'in',
    'ft',
    'ft',
  ]);
  expect(findUnit('"')).toBeUndefined();
  expect(findMark('in')).toBeUndefined();
});

test('every spelling that is suggested is found', () => {
  expect(SPELLINGS.filter((spelling) => findUnit(spelling) === undefined)).toEqual([]);
});
