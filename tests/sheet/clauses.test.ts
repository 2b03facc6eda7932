import { describe, expect, test } from 'vitest';
import { createCursor, ReadFault } from '../../src/language/cursor.ts';
import { printText } from '../../src/language/print-text.ts';
import type { Problem } from '../../src/language/problem.ts';
import { type ClauseWord, readClauses, readUnit, readWord } from '../../src/sheet/clauses.ts';

const ALL = [
  'label',
  'as',
  'to',
  'from',
  'how',
  'datum',
  'source',
  'below',
  'above',
  'positive',
  'negative',
  'zero',
  'near',
  'within',
  'valid',
  'a',
  'x',
  'y',
  'on',
] as const satisfies readonly ClauseWord[];

const cursorOver = (text: string) => createCursor(text, 'sheet', 0, text.length);
const read = (text: string, allowed: readonly ClauseWord[] = ALL) =>
  readClauses(cursorOver(text), allowed);

function faultOf(work: () => unknown): Problem {
  try {
    work();
  } catch (fault) {
    if (fault instanceof ReadFault) return fault.problem;
    throw fault;
  }
  throw new Error('no fault');
}

describe('one clause', () => {
  test.each([
    ['', {}],
    ['"Gap"', { label: 'Gap' }],
    ['""', { label: '' }],
    ['to 0.001', { resolution: 0.001 }],
    ['to 1/64', { fraction: 64 }],
    ['how "Caliper."', { how: 'Caliper.' }],
    [
      'datum down "straightedge" to "finger tips"',
      { datum: { kind: 'down', from: 'straightedge', to: 'finger tips' } },
    ],
    ['datum across "bush"', { datum: { kind: 'across', from: 'bush' } }],
    ['source "a book"', { source: 'a book' }],
    ['below "Too small."', { below: 'Too small.' }],
    ['above "Too big."', { above: 'Too big.' }],
    ['positive "Out."', { positive: 'Out.' }],
    ['negative "In."', { negative: 'In.' }],
    ['zero "Leave it."', { zero: 'Leave it.' }],
    ['x "Wear"', { xLabel: 'Wear' }],
    ['y "Gap"', { yLabel: 'Gap' }],
    ['on x', { axis: 'x' }],
    ['on y', { axis: 'y' }],
  ])('%s', (text, clauses) => {
    expect(read(text)).toEqual(clauses);
  });

  test('as takes a unit', () => {
    expect(read('as lbf·ft').unit!.symbol).toBe('lbf·ft');
  });

  test('from, near, within and valid take formulas', () => {
    const { range, near, within, valid } = read(
      'from least - 1 to 2 * 3 near stock within 1 mm valid when a < b and b < c "No."',
    );
    const trees = [range!.from, range!.to, near!, within!, valid!.condition];
    expect(trees.map((tree) => printText(tree))).toEqual([
      'least - 1',
      '2 * 3',
      'stock',
      '1 mm',
      'a < b and b < c',
    ]);
    expect(valid!.sentence).toBe('No.');
  });

  test('a line for each takes a name', () => {
    expect(read('a line for each gear_name').lines).toMatchObject({ name: 'gear_name' });
  });
});

test('clauses stand in any order', () => {
  const parts = ['"Gap"', 'to 0.1', 'how "So."'];
  const found = read(parts.join(' '));
  expect(read(parts.toReversed().join(' '))).toEqual(found);
});

test.each([
  ['as', 'unexpected-end'],
  ['as furlong', 'unknown-unit'],
  ['to', 'unexpected-end'],
  ['to 0', 'unexpected-word'],
  ['to -1', 'unexpected-word'],
  ['to 1 mm', 'unexpected-word'],
  ['to 1/0', 'unexpected-word'],
  ['to small', 'unexpected-word'],
  ['from 1', 'unexpected-end'],
  ['from 1 up 2', 'unexpected-word'],
  ['how Caliper', 'unexpected-word'],
  ['datum', 'unexpected-end'],
  ['datum "straightedge"', 'unexpected-word'],
  ['datum constructor "bush"', 'unexpected-word'],
  ['datum down "straightedge"', 'unexpected-end'],
  ['datum down "straightedge" "tips"', 'unexpected-word'],
  ['datum across "bush" to "seat"', 'unexpected-word'],
  ['valid a > b "No."', 'unexpected-word'],
  ['valid when a > b', 'unexpected-end'],
  ['a line for gears', 'unexpected-word'],
  ['on z', 'unexpected-word'],
  ['"Gap" "Gap"', 'repeated-clause'],
  ['to 0.1 to 0.1', 'repeated-clause'],
  ['colour "red"', 'unknown-clause'],
  ['constructor', 'unknown-clause'],
  ['+ 1', 'unknown-clause'],
])('%s is refused: %s', (text, code) => {
  expect(faultOf(() => read(text)).code).toBe(code);
});

test('what a statement does not allow is refused with all that it does', () => {
  expect(faultOf(() => read('as mm', ['label', 'to'])).message).toBe(
    '"as" is not understood here; after the value may stand a label in quotation marks, to 0.001',
  );
});

test('a statement that allows nothing says so in a whole sentence', () => {
  expect(faultOf(() => read('thou', [])).message).toBe(
    '"thou" is not understood here; after the value may stand nothing more',
  );
});

test('every clause shows how it is written, and may be asked for', () => {
  const { message } = faultOf(() => read('colour'));
  for (const word of ALL.slice(1)) expect(message).toMatch(new RegExp(`[ ,]${word} `));
});

test('a unit and a word are taken, and the cursor stands behind them', () => {
  const cursor = cursorOver('mm/rev so that');
  expect(readUnit(cursor).symbol).toBe('mm/rev');
  readWord(cursor, 'so');
  expect(faultOf(() => readWord(cursor, 'than')).message).toBe('expected "than", found "that"');
});
