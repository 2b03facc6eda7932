import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { printText } from '../../../src/language/print-text.ts';
import type { GivenDefault } from '../../../src/sheet/sheet.ts';
import { faultsOf, makeOne, readBlock } from './made-block.ts';

function read(line: string) {
  const { statements, problems } = readBlock('given', '', line);
  expect(problems).toEqual([]);
  return statements[0]!;
}

/** A default without places and with its unit's symbol only. */
function plain(value: GivenDefault): unknown {
  switch (value.type) {
    case 'entry':
      return { entry: value.text };
    case 'blank':
      return { blank: value.unit?.symbol, list: value.list };
    case 'pick':
      return { pick: value.row, table: value.table.name, column: value.column };
    default:
      return { text: value.value };
  }
}

describe('what stands behind the equals sign', () => {
  test.each([
    ['3.212 ± 0.003 in', { entry: '3.212 ± 0.003 in' }],
    ['5.01; 5.02; 4.98 mm "Readings"', { entry: '5.01; 5.02; 4.98 mm' }],
    ['[1/16, 1/8] in', { entry: '[1/16, 1/8] in' }],
    ['3 1/8 in from 1 in to 4 in', { entry: '3 1/8 in' }],
    ['3 in as mm', { entry: '3 in' }],
    ['3 in datum across "bush"', { entry: '3 in' }],
    ['blank datum across "bush"', { blank: undefined, list: false }],
    ['3 in # a note', { entry: '3 in' }],
    // Words that are none of its clauses belong to the entry, and are refused when it is read.
    ['3 furlong below "Too small."', { entry: '3 furlong below' }],
    ['"A. N. Other" "Fitted by"', { text: 'A. N. Other' }],
    ['""', { text: '' }],
    ['blank', { blank: undefined, list: false }],
    ['blank "Ratio"', { blank: undefined, list: false }],
    ['blank from 1 to 2', { blank: undefined, list: false }],
    ['blank as %', { blank: undefined, list: false }],
    ['blank mm', { blank: 'mm', list: false }],
    ['blank lbf·ft how "With a wrench."', { blank: 'lbf·ft', list: false }],
    ['blank list', { blank: undefined, list: true }],
    ['blank mm list "Packers"', { blank: 'mm', list: true }],
    ['pick "Medium" from bolts', { pick: 'Medium', table: 'bolts', column: undefined }],
    ['pick "Medium" from bolts.length', { pick: 'Medium', table: 'bolts', column: 'length' }],
  ])('%s', (text, value) => {
    expect(plain(read(`gap = ${text}`).value)).toEqual(value);
  });
});

test('between what it is taken stands with the given', () => {
  expect(read('gap = 3 in datum along "face" to "seal" to 0.1').datum).toEqual({
    kind: 'along',
    from: 'face',
    to: 'seal',
  });
});

test('an entry keeps its place in the sheet', () => {
  const { source, parts } = makeOne('given', '# note', 'gap =   3.212 in "Gap"');
  const [part] = parts;
  const value = part?.kind === 'given' ? part.statements[0]!.value : undefined;
  if (value?.type !== 'entry') throw new Error('no entry');
  expect(source.slice(value.from)).toMatch(/^3\.212 in "Gap"/);
});

test('an entry stands in the statement as it was typed, letter for letter', () => {
  const typed = fc.stringMatching(/^[0-9.][0-9 .+\-*/±;,()]{0,20}[0-9a-z°%]$/);
  fc.assert(
    fc.property(typed, (text) => {
      expect(plain(read(`gap = ${text} "Gap"`).value)).toEqual({ entry: text });
    }),
  );
});

test('all that may stand behind the value, in any order', () => {
  const found = read(
    'gap = 3 in source "the book" to 0.001 as mm how "Caliper." from 1 in to 2 * 2 in "Gap"',
  );
  expect(found).toMatchObject({
    name: 'gap',
    label: 'Gap',
    how: 'Caliper.',
    source: 'the book',
    display: { unit: { symbol: 'mm' }, resolution: 0.001 },
  });
  expect([found.range!.from, found.range!.to].map((end) => printText(end))).toEqual([
    '1 in',
    '2 * 2 in',
  ]);
});

test('a given without a label is called by its name', () => {
  expect(read('disc_wear = 1 mm').label).toBe('Disc wear');
});

test.each([
  ['gap 3 in', 'unexpected-word 2:5'],
  ['gap =', 'unexpected-end 2:6'],
  ['gap = blank furlong', 'unknown-unit 2:13'],
  ['gap = pick Medium from bolts', 'unexpected-word 2:12'],
  ['gap = pick "Medium" in bolts', 'unexpected-word 2:21'],
  ['gap = pick "Medium" from bolts.', 'unexpected-end 2:32'],
  ['in = 3', 'reserved-name 2:1'],
])('%s is refused: %s', (line, fault) => {
  const found = readBlock('given', '', line, 'arm = 2 in');
  expect(faultsOf(found)).toEqual([fault]);
  expect(found.statements.map(({ name }) => name)).toEqual(['arm']);
});

test('an empty block holds nothing, and that is no fault', () => {
  expect(readBlock('given', '')).toMatchObject({ statements: [], problems: [] });
});
