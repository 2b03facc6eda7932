import { expect, test } from 'vitest';
import { describeReading } from '../../src/page/echo.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';

const inch = parseUnit('in')!;
const value = (inches: number) =>
  ({ state: 'value', value: inches * 0.0254, explicit: false }) as const;
const bare = (text: string): string[] => text.split(' | ').map((line) => line.replace('_', '\u00a0'));

test.each([
  ['a decimal', 3.212, '3.212', '81.585_mm'],
  ['a fraction', 3.046875, '3 3/64', '= 3.0469_in | 77.391_mm'],
  ['another unit', 80.6 / 25.4, '80.6 mm', '= 3.1732_in | 80.6_mm'],
  ['thousandths', 0.025, '25 thou', '= 0.025_in | 0.635_mm'],
  ['a sum', 2.962, '3.212 - 0.250', '= 2.962_in | 75.235_mm'],
  ['a negative', -0.5, '-0.5', '= −0.5_in | −12.7_mm'],
  ['nothing much', 0, '0', '0_mm'],
  ['a tolerance', 3.212, '3.212 ± 0.003', '81.585_mm'],
])('%s is echoed in what was not typed', (_, inches, text, lines) => {
  expect(describeReading(value(inches), { text, unit: inch })).toEqual(bare(lines));
});

test('of several readings the mean is told', () => {
  const reading = { ...value(3.212), readings: [0.0815, 0.0816, 0.0817] };
  expect(describeReading(reading, { text: '3.211; 3.214; 3.211', unit: inch })).toEqual(
    bare('mean of 3 | = 3.212_in | 81.585_mm'),
  );
});

test('a plain number has no other system', () => {
  const reading = { state: 'value', value: 3.25, explicit: false } as const;
  expect(describeReading(reading, { text: '32 1/2 / 10', unit: undefined })).toEqual(['= 3.25']);
  expect(describeReading(reading, { text: '3.25', unit: undefined })).toEqual([]);
});

test('a list is counted', () => {
  const reading = { state: 'value', value: Float64Array.of(1, 2), explicit: false } as const;
  expect(describeReading(reading, { text: '[1, 2]', unit: inch })).toEqual(['a list of 2']);
});

test('blank is said, and what cannot be read has no echo', () => {
  expect(describeReading({ state: 'blank' }, { text: '', unit: inch })).toEqual(['left blank']);
  const problem = { code: 'malformed-number', message: 'no', from: 0, to: 0 } as const;
  expect(describeReading({ state: 'failed', problem }, { text: 'x', unit: inch })).toEqual([]);
});

test('words need no echo', () => {
  const reading = { state: 'value', value: 'A. N. Other', explicit: false } as const;
  expect(describeReading(reading, { text: 'A. N. Other', unit: undefined })).toEqual([]);
});
