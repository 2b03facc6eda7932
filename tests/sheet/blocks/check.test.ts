import { describe, expect, test } from 'vitest';
import { printText } from '../../../src/language/print-text.ts';
import type { Expression } from '../../../src/language/tree.ts';
import { faultsOf, readBlock } from './made-block.ts';

const print = (tree: Expression | undefined) => tree && printText(tree);

describe('windows', () => {
  test.each([
    ['gap between 1 in and 2 in', '1 in', '2 in', undefined],
    ['gap between least and 2 * least', 'least', '2 * least', undefined],
    ['gap at least 1 in', '1 in', undefined, undefined],
    ['gap at most 2 in', undefined, '2 in', undefined],
    ['gap is wanted', undefined, undefined, 'wanted'],
    ['fitted is "Medium"', undefined, undefined, '"Medium"'],
  ])('%s', (line, least, most, equals) => {
    const { statements, problems } = readBlock('check', '', line);
    expect(problems).toEqual([]);
    const [found] = statements;
    expect([print(found!.least), print(found!.most), print(found!.equals)]).toEqual([
      least,
      most,
      equals,
    ]);
  });
});

test('what it means to be outside, on either side, and where the window comes from', () => {
  const [found] = readBlock(
    'check',
    '',
    'gap_left at least 1 in "Gap"',
    '  above "Free." below "It rides." source "common practice, no source"',
  ).statements;
  expect(found).toMatchObject({
    name: 'gap_left',
    label: 'Gap',
    subject: { name: 'gap_left' },
    above: 'Free.',
    below: 'It rides.',
    source: 'common practice, no source',
  });
});

test.each([
  ['', { layout: 'gauges' }],
  ['"Clearances"', { layout: 'gauges', title: 'Clearances' }],
  ['table', { layout: 'table' }],
  ['table "Clearances"', { layout: 'table', title: 'Clearances' }],
])('behind the word check may stand: %s', (info, heading) => {
  const found = readBlock('check', info, 'gap at least 1 in');
  expect(found).toMatchObject(heading);
  expect('title' in found).toBe('title' in heading);
});

test('a heading that cannot be read leaves the checks as gauges', () => {
  const found = readBlock('check', 'as in', 'gap at least 1 in');
  expect(faultsOf(found)).toEqual(['unknown-clause 1:10']);
  expect(found).toMatchObject({ layout: 'gauges', statements: [{ name: 'gap' }] });
});

test.each([
  ['gap', 'unexpected-end 2:4'],
  ['gap over 1 in', 'unexpected-word 2:5'],
  ['gap at', 'unexpected-end 2:7'],
  ['gap at worst 1 in', 'unexpected-word 2:8'],
  ['gap between 1 in', 'unexpected-end 2:17'],
  ['gap between 1 in and', 'unexpected-end 2:21'],
  ['gap + 1 in at least 2 in', 'unexpected-word 2:5'],
  ['gap at least 1 in positive "Good."', 'unknown-clause 2:19'],
])('%s is refused: %s', (line, fault) => {
  expect(faultsOf(readBlock('check', '', line))).toEqual([fault]);
});
