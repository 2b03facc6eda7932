import { expect, test } from 'vitest';
import { sayLevel, sayPlace, sayWindow } from '../../src/chart/mark-sentence.ts';
import { chart, sample } from '../support/chart-cases.ts';

function lines(...all: readonly ((x: number) => number)[]) {
  const names = all.length === 1 ? ['Height'] : ['a', 'b', 'c'];
  return chart({
    series: all.map((f, i) => ({ label: names[i]!, points: sample(f, 0, 10), now: 0 })),
  });
}

const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const level = (value: number) => ({ axis: 'y' as const, value, label: 'Limit' });
const place = { axis: 'x' as const, value: 4, label: 'Here' };
const up = (x: number) => x;

test.each([
  ['it meets Limit, 5 mm, at 5 s', lines(up), 5],
  ['it stays below Limit, 50 mm', lines(up), 50],
  ['it stays above Limit, −5 mm', lines(up), -5],
  ['it comes up to Limit, 10 mm', lines((x) => 0.99999 * x), 10],
  ['it comes down to Limit, 0 mm', lines((x) => x + 0.0001), 0],
  ['it meets Limit, 5 mm, at 2 s and 8 s', lines((x) => Math.abs(x - 5) + 2), 5],
  ['it meets Limit, 5 mm, at 1.57 s, 4.71 s and 7.85 s', lines((x) => 5 + 3 * Math.cos(x)), 5],
  ['Limit, 5 mm, is met by a at 5 s; b stays below it', lines(up, (x) => x / 4), 5],
  ['every line stays below Limit, 50 mm', lines(up, up), 50],
  ['', lines(() => Number.NaN), 5],
])('"%s"', (sentence, data, value) => {
  expect(plain(sayLevel(data, level(value)))).toBe(sentence);
});

test('a level met many times is counted', () => {
  const wavy = lines((x) => 5 + 3 * Math.cos(2 * x));
  expect(plain(sayLevel(wavy, level(5)))).toMatch(
    /^it meets Limit, 5 mm, 6 times, first at 0\.79 s$/,
  );
});

test('a place tells the values there', () => {
  expect(plain(sayPlace(lines(up), place))).toBe('at Here, 4 s, height is 4 mm');
  expect(
    plain(
      sayPlace(
        lines(up, (x) => 2 * x),
        place,
      ),
    ),
  ).toBe('at Here, 4 s: a 4 mm, b 8 mm');
  expect(
    plain(
      sayPlace(
        lines(() => Number.NaN),
        place,
      ),
    ),
  ).toBe('Here, 4 s, is marked');
});

test('a window tells where lines lie in it', () => {
  const window = { least: 2, most: 6, label: 'Window' };
  const say = (...all: readonly ((x: number) => number)[]) =>
    plain(sayWindow(lines(...all), window));
  expect(say(up)).toBe('it lies inside Window, 2 mm to 6 mm, from 2 s to 6 s');
  expect(say(() => 4)).toBe('it lies inside Window, 2 mm to 6 mm, throughout');
  expect(say(() => 9)).toBe('it lies outside Window, 2 mm to 6 mm, throughout');
  expect(
    say(
      () => 4,
      () => 9,
    ),
  ).toBe('Window, 2 mm to 6 mm: a lies inside throughout; b lies outside throughout');
  expect(
    say(
      up,
      () => 9,
      () => 9,
    ),
  ).toBe('Window, 2 mm to 6 mm: a lies inside from 2 s to 6 s; b and c lie outside throughout');
  expect(
    say(
      () => 4,
      () => 5,
    ),
  ).toBe('Window, 2 mm to 6 mm: every line lies inside throughout');
  expect(say(() => Number.NaN)).toBe('');
});
