import { expect, test } from 'vitest';
import { nearestUnits, unknownUnit } from '../../src/units/nearest-units.ts';

test.each([
  ['rmp', ['rpm']],
  ['mhp', ['mph', 'hp']],
  ['inchs', ['in']],
  ['furlong', []],
])('near to %s are %j', (word, units) => {
  expect(nearestUnits(word)).toEqual(units);
});

test('two spellings of one unit are offered once, by its symbol', () => {
  expect(nearestUnits('minutess')).toEqual(['min']);
});

test('the sentence names the word and the cure', () => {
  expect(unknownUnit('rmp')).toBe('no unit is called rmp; did you mean rpm?');
  expect(unknownUnit('furlong')).toBe('no unit is called furlong');
  expect(unknownUnit('°C')).toBe('no unit is called °C');
});

test('a pasted page is quoted short', () => {
  expect(unknownUnit('x'.repeat(100_000)).length).toBeLessThan(70);
});
