import { expect, test } from 'vitest';
import type { Verdict } from '../../src/sheet/verdict.ts';
import { describeVerdict } from '../../src/sheet/verdict-words.ts';

const writing = {
  show: (value: number) => `${value} in`,
  name: (place: number) => `no. ${place + 1}`,
};

test.each<[string, Verdict, string]>([
  [
    'inside a window',
    { verdict: 'pass', values: [4], least: 1, most: 6, margin: 2, worst: 0 },
    'Inside the window. 2 in to the nearer limit.',
  ],
  [
    'above a least',
    { verdict: 'pass', values: [4], least: 1, margin: 3, worst: 0 },
    'Enough. 3 in to spare above 1 in.',
  ],
  [
    'below a most',
    { verdict: 'pass', values: [4], most: 6, margin: 2, worst: 0 },
    'Not too much. 2 in to spare below 6 in.',
  ],
  [
    'too small',
    { verdict: 'fail', side: 'below', values: [4], least: 5, most: 9, margin: 1, worst: 0 },
    '4 in is 1 in less than the least allowed, 5 in.',
  ],
  [
    'too large, one of a list',
    { verdict: 'fail', side: 'above', values: [4, 8], most: 5, margin: 3, worst: 1 },
    'no. 2: 8 in is 3 in more than the most allowed, 5 in.',
  ],
  [
    'whose limits have passed each other',
    { verdict: 'fail', side: 'below', values: [4], least: 6, most: 3, margin: 2, worst: 0 },
    'Nothing can pass: the least allowed, 6 in, is more than the most, 3 in.',
  ],
  [
    'that is what it must be',
    { verdict: 'pass', values: [4], least: 4, most: 4, margin: 0, worst: 0 },
    'The same: 4 in.',
  ],
  [
    'that is not what it must be',
    { verdict: 'fail', side: 'above', values: [5], least: 4, most: 4, margin: 1, worst: 0 },
    'Not the same: 5 in is 1 in more than 4 in.',
  ],
  ['in the right words', { verdict: 'pass', values: [], margin: 0, worst: 0 }, 'The same.'],
  ['in other words', { verdict: 'fail', values: [], margin: 0, worst: 0 }, 'Not the same.'],
  ['without a value', { verdict: 'unknown', values: [] }, 'Cannot be told yet.'],
])('a value %s is told in a sentence', (_, verdict, sentence) => {
  expect(describeVerdict(verdict, writing)).toBe(sentence);
});
