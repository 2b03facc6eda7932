import { expect, test } from 'vitest';
import { nameKind } from '../../src/language/kind.ts';
import { parseExpression } from '../../src/language/parse.ts';
import { draftCells } from '../../src/sheet/drafts.ts';
import { linkFormula } from '../../src/sheet/link-formula.ts';
import { block, makeSheet } from './made-book.ts';

const { book, frame } = makeSheet(
  block('given', 'gap = 3 mm', 'bad = 3 furlong', 'sizes = [1, 2]') +
    block('work', 'after = bad * 2'),
);
const context = { drafts: draftCells(book.sheets), cells: book.cells, functions: book.functions };

function link(source: string) {
  const tree = parseExpression(source, 'sheet');
  if ('code' in tree) throw new Error(tree.message);
  return linkFormula(tree, book.sheets[0]!, 'my_cell', context);
}

function problemsOf(source: string) {
  const linked = link(source);
  return 'problems' in linked ? linked.problems : [];
}

test('a sound formula is checked, compiled, and runs on the memory of its sheet', () => {
  const linked = link('2 * gap + 1 mm');
  if (!('formula' in linked)) throw new Error('not linked');
  expect(nameKind(linked.formula.kind)).toBe('length');
  expect(linked.formula.code.run(frame.memory)).toBeCloseTo(0.007, 12);
  expect(linked.formula.kinds.get(linked.formula.tree)).toBe(linked.formula.kind);
});

test('every fault of a formula is told, placed, and in the name of its cell', () => {
  const problems = problemsOf('(gap + 1 s) * ghost');
  expect(problems.map(({ code }) => code)).toEqual(['dimension-mismatch', 'unknown-name']);
  for (const { place, cell } of problems)
    expect([place!.file, cell]).toEqual(['made.md', 'my_cell']);
});

test('a formula that reads a value with an error waits for it, and says which is at the root', () => {
  expect(problemsOf('gap + after')).toMatchObject([
    {
      code: 'waiting',
      waitsFor: 'after',
      message: 'waits for after, which waits for bad, which has an error',
    },
  ]);
});

test('it waits also where its kind is known in spite of the error', () => {
  for (const source of ['if gap > bad then 1 else 2', 'count([1, 2]) + 0 * bad / bad'])
    expect(problemsOf(source)).toMatchObject([{ code: 'waiting', waitsFor: 'bad' }]);
});

test('a fault of its own goes before the waiting for another’s', () => {
  expect(problemsOf('bad + ghost').map(({ code }) => code)).toEqual(['unknown-name']);
});
