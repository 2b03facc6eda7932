import { expect, test } from 'vitest';
import { readEntry } from '../../src/language/entry.ts';
import { describeReading } from '../../src/page/echo.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';

const inch = parseUnit('in')!;
const LENGTH = { kind: { type: 'quantity', dimension: inch.dimension }, unit: inch } as const;

function echo(text: string): readonly string[] {
  return describeReading(readEntry(text, LENGTH), { text, unit: inch });
}

test.each([
  ['a decimal', '3.212', '81.585_mm'],
  ['a tolerance', '3.212 ± 0.003', '81.585_mm'],
  ['a fraction', '3 3/64', '3.046875_in | 77.391_mm'],
  ['another unit', '80.6 mm', '80.6_mm = 3.173228_in'],
  ['thousandths', '25 thou', '25_thou = 0.025_in'],
  ['a sum', '3.212 - 0.250', '2.962_in | 75.235_mm'],
  ['a negative', '-0.5', '−0.5_in | −12.7_mm'],
  ['repeated readings', '3.211; 3.214; 3.211', 'mean of 3: 3.212_in | 81.585_mm'],
  ['nothing at all', '', 'left blank'],
])('%s is echoed in what was not typed', (_, text, lines) => {
  expect(echo(text)).toEqual(lines.split(' | ').map((line) => line.replaceAll('_', '\u00a0')));
});

test('what cannot be read has no echo: its sentence tells', () => {
  expect(echo('nonsense')).toEqual([]);
});

test('a plain number has no other system', () => {
  const reading = { state: 'value', value: 3.25, explicit: false } as const;
  expect(describeReading(reading, { text: '32 1/2 / 10', unit: undefined })).toEqual(['3.25']);
  expect(describeReading(reading, { text: '3.25', unit: undefined })).toEqual([]);
});

test('a list of decimals is counted, any other is read out', () => {
  const kind = { type: 'list', dimension: inch.dimension } as const;
  const listed = (text: string) =>
    describeReading(readEntry(text, { kind, unit: inch }), { text, unit: inch });
  expect(listed('[0.010, 0.015]')).toEqual(['a list of 2']);
  expect(listed('[1/8, 1/4]')).toEqual(['[0.125, 0.25]\u00a0in']);
});

test('words need no echo', () => {
  const reading = { state: 'value', value: 'A. N. Other', explicit: false } as const;
  expect(describeReading(reading, { text: 'A. N. Other', unit: undefined })).toEqual([]);
});
