import { describe, expect, test } from 'vitest';
import { scanMeasure } from '../../src/units/scan-measure.ts';

describe('a number is read with its unit', () => {
  test.each([
    ['3 in', 3, 'in', 4],
    ['25thou', 25, 'thou', 6],
    ['25   thou', 25, 'thou', 9],
    ['3 1/8 in', 3.125, 'in', 8],
    ['1/8 in', 0.125, 'in', 6],
    ['1/8in', 0.125, 'in', 5],
    ['10/4 in/rev', 2.5, 'in/rev', 11],
    ['832 1/mi', 832, '1/mi', 8],
    ['5°', 5, 'deg', 2],
    ['5 %', 5, '%', 3],
    ['300 lb-ft', 300, 'lbf·ft', 9],
    ['3 in/x', 3, 'in', 4],
  ])('%s is %d %s', (text, amount, symbol, to) => {
    const measure = scanMeasure(text, 0, 'sheet');
    expect(measure).toMatchObject({ amount, to, unit: { symbol } });
  });

  test.each([
    ['3', 3, 1],
    ['3 and', 3, 1],
    ['3 inn', 3, 1],
    ['3 "label"', 3, 1],
    ['1/8', 1, 1],
    ['1/8 x', 1, 1],
    ['3 1/8', 3.125, 5],
    ['3 + 2', 3, 1],
    ['3 in_x', 3, 1],
  ])('%s is the bare %d', (text, amount, to) => {
    const measure = scanMeasure(text, 0, 'sheet');
    expect(measure).toMatchObject({ amount, to, unit: undefined });
  });
});

test.each([
  ['3rmp', 'no unit is called rmp; did you mean rpm?'],
  ['3x', 'no unit is called x'],
  ['0x10', 'no unit is called x10'],
  ['3_000', 'no unit is called _000'],
  ['5°C', 'no unit is called °C'],
  ['3e', 'no unit is called e'],
])('a word glued on that is no unit makes %s unreadable', (text, message) => {
  expect(scanMeasure(text, 0, 'sheet')).toEqual({
    failure: 'unknown-unit',
    message,
    from: 1,
    to: text.length,
  });
});

test.each(['3.5⅛', '3.5 ⅛ in'])('%s either is refused or leaves the fraction standing', (text) => {
  const found = scanMeasure(text, 0, 'sheet');
  const left = text[3] === ' ';
  expect(found).toMatchObject(left ? { amount: 3.5, to: 3 } : { failure: 'malformed-number' });
});

test('a glued page of letters is refused with a short sentence', () => {
  const found = scanMeasure(`3${'x'.repeat(100_000)}`, 0, 'entry');
  expect((found as { message: string }).message.length).toBeLessThan(70);
});
