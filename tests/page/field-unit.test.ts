import { expect, test } from 'vitest';
import { fieldUnitOf, formatEntry, withoutUnit } from '../../src/page/field-unit.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';

const inch = parseUnit('in')!;
const mm = parseUnit('mm')!;

test('an inch becomes a millimetre on a metric page', () => {
  expect(fieldUnitOf(inch, undefined, 'metric')?.symbol).toBe('mm');
  expect(fieldUnitOf(inch, undefined, 'inch-pound')).toBe(inch);
});

test('a millimetre stays a millimetre on an inch-pound page: a tyre is 205 mm wide everywhere', () => {
  expect(fieldUnitOf(mm, undefined, 'inch-pound')).toBe(mm);
});

test('a unit that the sheet insists on stays: a rim is 15 in everywhere', () => {
  expect(fieldUnitOf(inch, inch, 'metric')).toBe(inch);
});

test('a plain number has no unit', () => {
  expect(fieldUnitOf(undefined, undefined, 'metric')).toBeUndefined();
});

test.each([
  ['a bare number in the field’s unit', { text: '3 1/8', unit: 'in' }, false, '3 1/8'],
  ['a bare number in another unit', { text: '81.5', unit: 'mm' }, false, '81.5 mm'],
  ['its own unit typed with it', { text: '80.6 mm', unit: 'in' }, true, '80.6 mm'],
  ['its own unit, taken under the other system', { text: '80.6 mm', unit: 'cm' }, true, '80.6 mm'],
  ['a list', { text: '[1, 2]', unit: 'mm' }, false, '[1, 2] mm'],
  ['nothing', { text: '', unit: 'mm' }, false, ''],
  ['words', { text: 'A. N. Other' }, false, 'A. N. Other'],
])('an entry of %s shows what it means', (_, entry, explicit, shown) => {
  expect(formatEntry(entry, explicit, inch)).toBe(shown);
});

test.each([
  ['3.212 ± 0.003 in', '3.212 ± 0.003'],
  ['3 1/8in', '3 1/8'],
  ['1.262; 1.258; 1.260 in', '1.262; 1.258; 1.260'],
  ['[0.005, 0.010] in', '[0.005, 0.010]'],
  ['80.6 mm', '80.6 mm'],
  ['3.25', '3.25'],
  ['1 in + 1 in', '1 in + 1 in'],
])('%s stands in a field of inches as %s', (text, shown) => {
  expect(withoutUnit(text, inch)).toBe(shown);
});
