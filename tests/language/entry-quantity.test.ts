import { describe, expect, test } from 'vitest';
import { readNumbers, readQuantity, type Tolerance } from '../../src/language/entry-quantity.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';
import { expectProblem, expectValue, field } from './made-entry.ts';

const INCH = 0.0254;
const INCHES = field('in');

function expectTolerance(found: Tolerance | undefined, minus: number, plus: number): void {
  expect(found?.minus).toBeCloseTo(minus, 12);
  expect(found?.plus).toBeCloseTo(plus, 12);
}

describe('a tolerance', () => {
  test.each([
    ['3.212 ± 0.003', 0.003, 0.003, false],
    ['3.212 ± 0.003 in', 0.003, 0.003, true],
    ['3.212 in ± 0.003', 0.003, 0.003, true],
    ['3.212 in +- 0.003 in', 0.003, 0.003, true],
    ['3.212 +/- 0.003', 0.003, 0.003, false],
    ['3.212 in ± 3 thou', 0.003, 0.003, true],
    ['3.212 in ± 0.0762 mm', 0.003, 0.003, true],
    ['3.212 in +0.05/-0.02', 0.02, 0.05, true],
    ['3.212 -0.02/+0.05 in', 0.02, 0.05, true],
    ['3.212 +5/-2 %', 0.06424, 0.1606, false],
    ['3.212 ± 1 %', 0.03212, 0.03212, false],
    ['3.212 in ± 1%', 0.03212, 0.03212, true],
    ['-3.212 ± 1%', 0.03212, 0.03212, false],
    ['3.212 ± 1/64', 1 / 64, 1 / 64, false],
    ['3.212 ± 0', 0, 0, false],
    ['3.212 - 0.250 ± 0.003', 0.003, 0.003, false],
    ['3.212 ± (0.002 + 0.001)', 0.003, 0.003, false],
  ])('in inches: %s', (text, minus, plus, explicit) => {
    const reading = expectValue(text, INCHES);
    expectTolerance(reading.tolerance, minus * INCH, plus * INCH);
    expect(reading.explicit).toBe(explicit);
    expect(reading.unit?.symbol).toBe('in');
  });

  test('behind a bare reading lends it its unit', () => {
    const reading = expectValue('80.6 ± 0.1 mm', INCHES);
    expect(reading.value).toBeCloseTo(0.0806, 12);
    expect([reading.unit?.symbol, reading.explicit]).toEqual(['mm', true]);
  });

  test('in % is a share of a plain number, and points of one in %', () => {
    expectTolerance(expectValue('3.55 ± 1 %', field('')).tolerance, 0.0355, 0.0355);
    expectTolerance(expectValue('60 % ± 2 %', field('')).tolerance, 0.02, 0.02);
    expectTolerance(expectValue('60 ± 2 %', field('%')).tolerance, 0.02, 0.02);
    expectTolerance(expectValue('60 ± 2', field('%')).tolerance, 0.02, 0.02);
  });

  test.each([
    ['3.212 ± -1', 'bad-tolerance', 'a tolerance is not negative: -1'],
    [
      '3.212 in ± 2 rpm',
      'bad-tolerance',
      'a tolerance of 2 rpm (turning speed) does not fit a reading that is length',
    ],
    ['3.212 ± 3 thou', 'mixed-units', 'is 3.212 in inches or in thou? write its unit too'],
    ['3.212 ± x', 'name-in-entry', '"x" is not a number or a unit'],
    ['3.212 ±', 'bad-tolerance', 'a number belongs behind ±'],
    ['3 in - 2 mm ± 1', 'bad-tolerance', 'a tolerance of 1 (plain number) does not fit'],
    ['1e300 ± 1e308 %', 'overflow', 'too large'],
  ])('%s is refused', (text, code, part) => {
    const problem = expectProblem(text, INCHES);
    expect(problem.message).toContain(part);
    expect(problem.code).toBe(code);
  });
});

describe('repeated readings', () => {
  test.each([
    '3.212; 3.214; 3.211 in',
    '3.212, 3.214, 3.211 in',
    '3.212 in; 3.214 in; 3.211 in',
    '3.212; 3.214; 3.211',
    '3.212; 3214 thou; 3.211 in',
    '3.212; 3.214; 3.211 ± 0.003 in',
  ])('give their mean: %s', (text) => {
    const reading = expectValue(text, INCHES);
    expect((reading.value as number) / INCH).toBeCloseTo((3.212 + 3.214 + 3.211) / 3, 9);
    expect(reading.readings?.map((one) => Number((one / INCH).toPrecision(9)))).toEqual([
      3.212, 3.214, 3.211,
    ]);
  });

  test('may have decimal commas between semicolons', () => {
    expect(expectValue('12,5; 12,7', INCHES).value).toBeCloseTo(12.6 * INCH, 12);
  });

  test('of one have no list of readings', () => {
    expect(expectValue('3.212', INCHES).readings).toBeUndefined();
  });

  test.each([
    ['3.212;', 'unreadable-entry', 'a number is missing beside a comma or ;'],
    ['3.212;; 3.214', 'unreadable-entry', 'a number is missing beside a comma or ;'],
    [';', 'unreadable-entry', 'a number is missing beside a comma or ;'],
    ['3.212 in; 3.214', 'mixed-units', '3.214 has no unit, but others have'],
    ['3,212; 3,214', 'ambiguous-number', '3,212 can be read as 3212 or as 3.212'],
    [
      '3.212 in, 3.214 in; 3',
      'unreadable-entry',
      'part readings with ; or with a comma and a blank',
    ],
    ['3.212; gap', 'name-in-entry', '"gap"'],
    ['1e308; 1e308', 'overflow', 'too large'],
  ])('%s are refused', (text, code, part) => {
    const problem = expectProblem(text, field(code === 'overflow' ? '' : 'in'));
    expect(problem.message).toContain(part);
    expect(problem.code).toBe(code);
  });
});

test('a field without a unit leaves bare numbers plain', () => {
  expect(readQuantity('3.2 ± 0.1', undefined)).toMatchObject({
    value: 3.2,
    dimension: [0, 0, 0, 0],
    unit: undefined,
  });
  expect(readQuantity('3.2', parseUnit('mm'))).toMatchObject({ value: 3.2 * 0.001 });
});

test('pieces are read until the first that is faulty', () => {
  expect(
    readNumbers('1;2', [
      { from: 0, to: 1 },
      { from: 2, to: 3 },
    ]),
  ).toHaveLength(2);
  expect(
    readNumbers('1; ', [
      { from: 0, to: 1 },
      { from: 2, to: 3 },
    ]),
  ).toMatchObject({ code: 'unreadable-entry' });
});
