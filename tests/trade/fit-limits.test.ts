import { describe, expect, test } from 'vitest';
import { ANSI_LIMITS, ISO_LIMITS } from '../../src/trade/fit-limits.ts';
import { refusalOf, runFunction } from '../support/run-function.ts';

const INCH = 0.0254;
const iso = (mm: number, zone: string) =>
  Array.from(
    runFunction(ISO_LIMITS, mm / 1000, zone) as Float64Array,
    (size) => Math.round((size * 1000 - mm) * 1000) + 0,
  );
const ansi = (inches: number, fit: string) =>
  Array.from(
    runFunction(ANSI_LIMITS, inches * INCH, fit) as Float64Array,
    (size) => Math.round((size / INCH - inches) * 1e5) / 100 + 0,
  );

describe('ISO 286', () => {
  test('gives the least size first', () => {
    expect(iso(35, 'K7')).toEqual([-18, 7]);
    expect(iso(15, 'g6')).toEqual([-17, -6]);
  });

  test('a size at the upper end of a range belongs to it, at the lower end it does not', () => {
    expect(iso(18, 'H7')).toEqual([0, 18]);
    expect(iso(50, 'H7')).toEqual([0, 25]);
    expect(iso(50.001, 'H7')).toEqual([0, 30]);
    expect(refusalOf(ISO_LIMITS, 0.01, 'H7')).toContain('H7 at 10 mm is not in the table');
  });

  test.each([
    ['between the ranges', 20, 'H7'],
    ['a zone not listed', 60, 'p6'],
    ['no zone at all', 15, ''],
    ['the name of something else', 15, 'toString'],
  ])('%s is refused', (_, mm, zone) => {
    expect(refusalOf(ISO_LIMITS, mm / 1000, zone)).toContain('the standard has it');
  });
});

describe('ANSI/ASME B4.1', () => {
  test('gives hole, then shaft', () => {
    expect(ansi(0.75, 'RC4')).toEqual([0, 1.2, -1.6, -0.8]);
    expect(ansi(0.5, 'FN2')).toEqual([0, 0.7, 1.2, 1.6]);
  });

  test.each([
    ['a size not listed', 2, 'RC4'],
    ['a hole in the table', 0.65, 'FN2'],
    ['a class not listed', 0.75, 'RC9'],
    ['the name of something else', 0.75, 'constructor'],
  ])('%s is refused', (_, inches, fit) => {
    expect(refusalOf(ANSI_LIMITS, inches * INCH, fit)).toContain('the standard has it');
  });
});
