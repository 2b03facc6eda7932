import { expect, test } from 'vitest';
import {
  joinWords,
  listWords,
  lowerFirst,
  nameInList,
  nameInSentence,
  upperFirst,
} from '../../src/chart/words.ts';

test.each([
  [[], ''],
  [['a'], 'a'],
  [['a', 'b'], 'a and b'],
  [['a', 'b', 'c'], 'a, b and c'],
])('%o is listed as "%s"', (words, text) => {
  expect(listWords(words)).toBe(text);
});

test('a name with a comma is quoted in a list', () => {
  expect(nameInList('Close, road')).toBe('“Close, road”');
  expect(nameInList('Close')).toBe('Close');
});

test.each([
  ['2 in by 0.065', '“2 in by 0.065”'],
  ['16 teeth', '“16 teeth”'],
  ['Held: hot', '“Held: hot”'],
  ['1st', '1st'],
  ['Road load', 'Road load'],
])('%s stands in a list as %s', (name, text) => {
  expect(nameInList(name)).toBe(text);
});

test('the one name of a sentence is in small letters, or quoted', () => {
  expect(nameInSentence('Road load')).toBe('road load');
  expect(nameInSentence('Held: hot, worn')).toBe('“Held: hot, worn”');
});

test('a label goes into a sentence in small letters, an abbreviation does not', () => {
  expect(lowerFirst('Road speed')).toBe('road speed');
  expect(lowerFirst('RPM at cruise')).toBe('RPM at cruise');
  expect(lowerFirst('')).toBe('');
  expect(upperFirst('it rises')).toBe('It rises');
});

test('a label and its value are joined where there are both', () => {
  expect(joinWords('Redline', '5500 rpm')).toBe('Redline, 5500 rpm');
  expect(joinWords('', '5500 rpm')).toBe('5500 rpm');
});
