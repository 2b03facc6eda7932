import { expect, test } from 'vitest';
import { sayCourses } from '../../src/chart/course-sentence.ts';
import { CHARTS, chart, sample } from '../support/chart-cases.ts';

function courses(...lines: readonly ((x: number) => number)[]): string {
  const series = lines.map((f, i) => ({ label: 'abcdef'[i]!, points: sample(f, 0, 10), now: 0 }));
  return sayCourses(chart({ series })).replaceAll('\u00a0', ' ');
}

const up = (x: number) => x;
const down = (x: number) => 10 - x;

test.each([
  ['it rises from 0 mm to 10 mm', [up]],
  ['it falls from 10 mm to 0 mm', [down]],
  ['it stays at 4 mm', [() => 4]],
  ['it rises to 9 mm at 5 s, then falls', [(x: number) => 9 - (x - 5) ** 2 / 4]],
  ['it falls to 1 mm at 5 s, then rises', [(x: number) => 1 + (x - 5) ** 2 / 4]],
  ['it has no values here', [() => Number.NaN]],
  ['every line rises from left to right', [up, up]],
  ['b falls from left to right; a and c rise from left to right', [up, down, up]],
  ['b falls from left to right; the others rise from left to right', [up, down, up, up]],
] as const)('"%s"', (sentence, lines) => {
  expect(courses(...lines)).toBe(sentence);
});

test('a saw-tooth goes up and down', () => {
  expect(sayCourses(CHARTS[1]![1]).replaceAll('\u00a0', ' ')).toBe(
    'it goes up and down between 0 rpm and 5400 rpm',
  );
});

test('no lines say nothing', () => {
  expect(courses()).toBe('');
});
