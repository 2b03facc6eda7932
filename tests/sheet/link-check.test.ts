import { describe, expect, test } from 'vitest';
import { block, makeSheet } from './made-book.ts';

const GIVENS = block(
  'given',
  'gap = 3 mm',
  'least = 2 mm',
  'sizes = [1, 2] mm',
  'words = "free"',
  'bad = 3 furlong',
);

function link(line: string) {
  const { book } = makeSheet(GIVENS + block('check', line));
  return { check: book.checks[0]!, problems: book.problems };
}

test('a window has its subject, its limits, and all that the verdict hangs on', () => {
  const { check } = link('gap between least and 2 * least');
  expect(check).toMatchObject({ index: 0, sheet: 'made', subject: 0, inputs: [0, 1] });
  expect([check.least, check.most, check.equals].map((limit) => limit !== undefined)).toEqual([
    true,
    true,
    false,
  ]);
});

describe('what goes together', () => {
  test.each([
    'gap at least 1 in',
    'sizes at most 5 mm',
    'words is "free"',
    'gap is least',
    'sizes is 1 mm',
  ])('%s', (line) => {
    const { check } = link(line);
    expect(check.problem).toBeUndefined();
  });
});

describe('what does not', () => {
  test.each([
    ['gap at least 1 s', 'dimension-mismatch'],
    ['gap at least sizes', 'dimension-mismatch'],
    ['gap is "free"', 'dimension-mismatch'],
    ['words at least 1', 'wrong-kind'],
    ['words is 1', 'wrong-kind'],
    ['ghost at least 1', 'unknown-name'],
    ['gap at least ghost', 'unknown-name'],
    ['gap between 2 mm and 1 mm', 'range-order'],
    ['bad at least 1 mm', 'waiting'],
    ['gap at least bad', 'waiting'],
  ])('%s: %s', (line, code) => {
    const { check } = link(line);
    expect(check.problem).toMatchObject({
      code,
      cell: line.split(' ')[0],
      place: { file: 'made.md' },
    });
    expect([check.least, check.most, check.equals]).toEqual([undefined, undefined, undefined]);
  });
});
