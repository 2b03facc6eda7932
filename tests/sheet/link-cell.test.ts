import { describe, expect, test } from 'vitest';
import { nameKind } from '../../src/language/kind.ts';
import { printText } from '../../src/language/print-text.ts';
import { sumOf } from '../../src/sheet/link-cell.ts';
import { readBlock } from './blocks/made-block.ts';
import { block, makeBook, makeSheet } from './made-book.ts';

describe('the chain of a stack as one formula', () => {
  test.each([
    [['+ a', '- b', '+ c'], 'a - b + c'],
    [['- a', '+ b'], '-a + b'],
    [['+ a - b', '- c - d'], 'a - b - (c - d)'],
    [['+ a'], 'a'],
    [['- a'], '-a'],
  ])('%j is %s', (lines, formula) => {
    expect(printText(sumOf(readBlock('stack', 'total', ...lines).stack!))).toBe(formula);
  });
});

describe('the unit that a result is shown in', () => {
  const GIVENS = block('given', 'flange = 3 in', 'washer = 2 mm', 'spin = 2000 rpm', 'ratio = 3');
  test.each([
    ['as its sheet says', 'x = flange * 2 as thou', 'thou'],
    ['as the first value that it reads is', 'x = ratio * flange + washer', 'in'],
    ['whichever that is', 'x = washer + flange', 'mm'],
    ['the usual one, where it reads none of its kind', 'x = flange * washer', 'mm^2'],
    ['none, where it is a plain number', 'x = flange / washer', undefined],
    ['none, where it is words', 'x = "free"', undefined],
    ['none, where it is a truth', 'x = flange > washer', undefined],
    ['that of a list’s elements', 'x = [1, 2] * spin', 'rpm'],
  ])('%s', (_, line, unit) => {
    const { cell, book } = makeSheet(GIVENS + block('work', line));
    expect(book.problems).toEqual([]);
    expect(cell('x').display.unit?.symbol).toBe(unit);
  });
});

test('a cell has an id that stays, what it reads, and where it comes from', () => {
  const { cell } = makeSheet(
    block('given', 'a = 1 mm "A" source "a book"') +
      block('work', 'b = a * 2 + a "B" source "derived"') +
      block('stack c "C"', '+ b', '+ a'),
  );
  expect(cell('b')).toMatchObject({
    id: 'made/b',
    label: 'B',
    source: 'derived',
    inputs: [cell('a').index],
    place: { line: 5 },
  });
  expect(cell('c')).toMatchObject({ role: 'stack', inputs: [1, 0], terms: [{}, {}] });
});

describe('a value carried in', () => {
  const { cell } = makeBook({
    'a.md': block('given', 'gap = 3 in "Gap" to 0.001') + block('work', 'bad = gap + 1 s'),
    'b.md': block('from a', 'gap as here', 'gap as named "Gap, here"', 'bad'),
  });

  test('has kind, digits and label of its own sheet, unless it is labelled here', () => {
    expect(cell('b/here')).toMatchObject({
      label: 'Gap',
      display: { resolution: 0.001, unit: { symbol: 'in' } },
      origin: cell('a/gap').index,
    });
    expect(nameKind(cell('b/here').kind!)).toBe('length');
    expect(cell('b/named').label).toBe('Gap, here');
  });

  test('waits where it has an error there', () => {
    expect(cell('b/bad')).toMatchObject({ kind: undefined, problem: { code: 'waiting' } });
  });
});

describe('where a formula holds', () => {
  const link = (condition: string) =>
    makeSheet(block('given', 'a = 3') + block('work', `b = a valid when ${condition} "No."`));

  test('is a formula of its own, and a value that it alone needs is read too', () => {
    const { cell } = makeSheet(
      block('given', 'a = 3', 'most = 6') + block('work', 'b = a valid when a < most "No."'),
    );
    expect(cell('b')).toMatchObject({ valid: { kind: { type: 'truth' } }, inputs: [0, 1] });
  });

  test.each([
    ['a + 1', 'wrong-kind'],
    ['a < 3 mm', 'dimension-mismatch'],
    ['a < ghost', 'unknown-name'],
  ])('%s is a fault, and does not bar the result', (condition, code) => {
    const { book, outcome } = link(condition);
    expect(book.problems.map((problem) => problem.code)).toEqual([code]);
    expect(outcome('b')).toMatchObject({ state: 'value', value: 3 });
  });
});

test.each([
  ['a result', block('work', 'x = 3 mm as rpm')],
  ['a truth', block('work', 'x = 3 > 2 as rpm')],
  ['a chain', block('stack x as rpm', '+ 3 mm')],
])('%s in a unit of another kind is refused', (_, text) => {
  const { book, cell } = makeSheet(text);
  expect(book.problems.map(({ code }) => code)).toEqual(['wrong-display']);
  expect(cell('x').kind).toBeUndefined();
});
