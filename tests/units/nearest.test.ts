import { expect, test } from 'vitest';
import { didYouMean, nearest } from '../../src/units/nearest.ts';

const NAMES = ['wanted_gap', 'gap', 'gap_when_worn', 'collar_pitch', 'tyre_width'];

test.each([
  ['an exchange of neighbours', 'wnated_gap', ['wanted_gap']],
  ['a missing letter', 'colar_pitch', ['collar_pitch']],
  ['a letter too many', 'gapp', ['gap']],
  ['a wrong letter', 'tire_width', ['tyre_width']],
  ['capitals', 'GAP', ['gap']],
  ['nothing alike', 'zzz', []],
  ['no letters', '', []],
])('%s is looked through', (_, word, found) => {
  expect(nearest(word, NAMES)).toEqual(found);
});

test('the best comes first, then the alphabet, and three are enough', () => {
  expect(nearest('rate', ['rats', 'gate', 'rate_1', 'rate', 'late'])).toEqual([
    'rate',
    'gate',
    'late',
  ]);
});

test('a name that stands twice is offered once', () => {
  expect(nearest('gap', ['gap', 'gap'])).toEqual(['gap']);
});

test('one letter is not near to every other letter', () => {
  expect(nearest('q', ['m', 's', 'h'])).toEqual([]);
});

test('a pasted page is no slip of any name', () => {
  expect(nearest('x'.repeat(100_000), NAMES)).toEqual([]);
});

test.each([
  [[], ''],
  [['a'], '; did you mean a?'],
  [['a', 'b'], '; did you mean a or b?'],
  [['a', 'b', 'c'], '; did you mean a, b or c?'],
])('%j is asked as %j', (names, question) => {
  expect(didYouMean(names)).toBe(question);
});
