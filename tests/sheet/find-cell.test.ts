import { describe, expect, test } from 'vitest';
import type { NameNode } from '../../src/language/tree.ts';
import { draftCells } from '../../src/sheet/drafts.ts';
import { findCell, findGiven } from '../../src/sheet/find-cell.ts';
import { LinkFault } from '../../src/sheet/link-fault.ts';
import { block, makeBook } from './made-book.ts';

const { book } = makeBook({
  'a.md':
    block('given', 'wear = 1 mm', 'bad = 3 furlong', 'sizes = [1, 2]') +
    block('work', 'left = wear * 2', 'lost = bad + 1') +
    block('table bolts', 'bolt', 'Short'),
  'b.md': block('from a', 'wear as lost_metal', 'left', 'bolts'),
  'c.md': block('from b', 'lost_metal as again'),
});
const context = { drafts: draftCells(book.sheets), cells: book.cells, functions: book.functions };

function look(sheet: string, name: string, find: typeof findCell = findCell): string {
  const node: NameNode = { type: 'name', name, from: 0, to: name.length };
  const where = book.sheets.find((each) => each.name === sheet)!;
  try {
    return find(node, where, context).id;
  } catch (fault) {
    if (fault instanceof LinkFault) return `${fault.problem.code}: ${fault.problem.message}`;
    throw fault;
  }
}
const lookGiven = (sheet: string, name: string) =>
  look(sheet, name, (...given) => findGiven(given[0], 'a test wants', given[1], given[2]));

describe('the cell of a name', () => {
  test.each([
    ['a', 'wear', 'a/wear'],
    ['b', 'left', 'b/left'],
    ['b', 'wear', 'unknown-name: no value is called wear'],
    ['a', 'waer', 'unknown-name: no value is called waer; did you mean wear?'],
    ['a', 'bad', 'waiting: waits for bad, which has an error'],
    ['a', 'lost', 'waiting: waits for lost, which waits for bad, which has an error'],
    ['a', 'constructor', 'unknown-name: no value is called constructor'],
  ])('on sheet %s, %s: %s', (sheet, name, found) => {
    expect(look(sheet, name)).toBe(found);
  });
});

describe('the given behind a name', () => {
  test.each([
    ['a', 'wear', 'a/wear'],
    ['a', 'sizes', 'a/sizes'],
    ['b', 'lost_metal', 'a/wear'],
    ['c', 'again', 'a/wear'],
    ['a', 'left', 'not-a-given: a test wants a given; left is worked out'],
    ['b', 'left', 'not-a-given: a test wants a given; left is worked out'],
    ['b', 'bolts', 'not-a-given: a test wants a given; bolts is a table'],
    ['a', 'bad', 'waiting: waits for bad, which has an error'],
  ])('on sheet %s, %s: %s', (sheet, name, found) => {
    expect(lookGiven(sheet, name)).toBe(found);
  });
});
