import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { linkBook } from '../../src/sheet/book.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import { block, makeBook, makeSheet } from './made-book.ts';

test('no sheets make an empty book', () => {
  const book = linkBook([]);
  expect(book).toMatchObject({ cells: [], order: [], checks: [], problems: [] });
  expect(book.find('a', 'b')).toBeUndefined();
  expect(book.cellsOf('a')).toEqual([]);
});

describe('a book of two sheets', () => {
  const { book } = makeBook({
    'a.md': block('given', 'x = 1 from 0 to 2') + block('chart "C"', 'x over x from 0 to 1'),
    'b.md':
      block('from a', 'x') +
      block('work', 'y = x + 1', 'z = y + 1') +
      block('check', 'z at least 1') +
      block('find', 'x so that z is 3') +
      block('practice "P"', 'ask z within 0.1 "How much?"') +
      block('drawing dial', 'angles = [0 deg]', 'readings = [0 mm]') +
      block('figures', 'z'),
  });

  test('gives each value the number at which it stands', () => {
    expect(book.problems).toEqual([]);
    expect(book.cells.every(({ index }, i) => index === i)).toBe(true);
    expect(book.steps.runs).toHaveLength(book.cells.length);
  });

  test('finds a value by its sheet and its name, and by nothing else', () => {
    expect(book.find('b', 'x')!.id).toBe('b/x');
    expect(book.find('a', 'y')).toBeUndefined();
    expect(book.find('b', 'constructor')).toBeUndefined();
    expect(book.cellsOf('b').map(({ name }) => name)).toEqual(['x', 'y', 'z']);
  });

  test('puts each value behind those that it reads', () => {
    for (const [i, index] of book.order.entries())
      for (const input of book.cells[index]!.inputs)
        expect(book.order.indexOf(input)).toBeLessThan(i);
  });

  test('holds what the sheets ask of their values, with the sheet that asks', () => {
    const asked = [
      book.checks,
      book.charts,
      book.drawings,
      book.finds,
      book.practices,
      book.figures,
    ];
    expect(asked.map((list) => list.map(({ sheet }) => sheet))).toEqual([
      ['b'],
      ['a'],
      ['b'],
      ['b'],
      ['b'],
      ['b'],
    ]);
  });
});

test('problems stand in the order of the files and of their lines, those of reading included', () => {
  const { book } = makeBook({
    'b.md': block('work', 'two = ghost'),
    'a.md':
      block('work', 'one = ghost', '= 3', 'three = 1 mm + 1 s') + block('check', 'ghost is 3'),
  });
  expect(book.problems.map(({ place }) => `${place!.file}:${place!.line}`)).toEqual([
    'a.md:2',
    'a.md:3',
    'a.md:4',
    'a.md:7',
    'b.md:2',
  ]);
});

test('what waits for an error is no error of its own', () => {
  const { book } = makeSheet(
    block('given', 'a = 3 furlong') +
      block('work', 'b = a + 1', 'c = b + 1') +
      block('check', 'c at least 1') +
      block('chart "C"', 'c over a from 1 to 2') +
      block('find', 'a so that c is 1') +
      block('practice "P"', 'ask c within 1 "How much?"') +
      block('drawing dial', 'angles = [a]', 'readings = [0 mm]') +
      block('figures', 'c'),
  );
  expect(book.problems.map(({ code }) => code)).toEqual(['unknown-unit']);
  const asked = [book.checks, book.charts, book.drawings, book.finds, book.practices, book.figures];
  for (const [one] of asked) expect(one!.problem).toMatchObject({ code: 'waiting' });
});

describe('a loop', () => {
  const { book } = makeBook({
    'a.md': block('work', 'p = q', 'q = r') + block('from b', 'r') + block('work', 'safe = 1'),
    'b.md': block('from a', 'p') + block('work', 'r = p + 1', 'after = r'),
  });

  test('is told once, as the way that it runs', () => {
    expect(book.problems.map(({ code, message }) => [code, message])).toEqual([
      [
        'loop',
        'these values wait for one another in a loop: p → q → r → b: r → b: p → p; break it at one of them',
      ],
    ]);
  });

  test('bars the values in it, those that wait for it, and no others', () => {
    const { code } = book.problems[0]!;
    for (const name of ['p', 'q', 'r']) expect(book.find('a', name)!.problem!.code).toBe(code);
    expect(book.find('b', 'after')!.problem!.code).toBe('waiting');
    expect(book.find('a', 'safe')!.problem).toBeUndefined();
  });
});

test('a book of any sheets links, whatever of them is missing or broken', () => {
  const line = fc.constantFrom(
    'a = b',
    'b = a + 1',
    'c = 1 mm + 1 s',
    'd = c',
    'a = 1 = 2',
    'e = f.g',
    '= 3',
    'g = [1, "x"]',
  );
  const piece = fc.oneof(
    fc.array(line, { maxLength: 4 }).map((lines) => block('work', ...lines)),
    fc.constantFrom(
      block('from made', 'a', 'ghost'),
      block('check', 'a at least b', 'c is d'),
      block('chart "C"', 'a over b from 1 to c'),
      block('find', 'a so that b is c from 1 to 2'),
      block('practice "P"', 'ask a within b "How?"', 'vary c'),
      block('drawing dial', 'angles = a'),
      block('stack total', '+ a', '- ghost'),
      block('table t', 'a,b (mm)', '1,x', '2'),
      '```work\nopen = 1',
    ),
  );
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 6 }), (pieces) => {
      const book = linkBook([readSheet(pieces.join('\n'), 'made.md')]);
      for (const { message, place } of book.problems) {
        expect(message).not.toMatch(/undefined|\[object/);
        expect(place).toBeDefined();
      }
      expect(
        book.cells.every((cell) => (cell.kind === undefined) === (cell.problem !== undefined)),
      ).toBe(true);
    }),
    { numRuns: 200 },
  );
});

test('a constant that several formulas use has one place in the memory, behind the cells', () => {
  const { book, frame } = makeBook({
    'made.md': block('given', 'a = 2') + block('work', 'b = a * 7', 'c = 7 + b', 'd = [7, 3] * b'),
  });
  expect(book.constants).toContain(7);
  expect(new Set(book.constants).size).toBe(book.constants.length);
  expect([...frame.memory.numbers.slice(book.cells.length)]).toEqual(book.constants);
  expect(frame.memory.others).toHaveLength(book.cells.length);
  expect([...(frame.memory.others[3] as Float64Array)]).toEqual([98, 42]);
});
