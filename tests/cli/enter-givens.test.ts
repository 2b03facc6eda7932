import { expect, test } from 'vitest';
import { enterGivens, listGivens } from '../../src/cli/enter-givens.ts';
import { linkBook } from '../../src/sheet/book.ts';
import { createFrame } from '../../src/sheet/create-frame.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import { SHAFT, WHEEL } from './made-sheets.ts';

const BOOK = linkBook([readSheet(SHAFT, '10-shaft.md'), readSheet(WHEEL, '20-wheel.md')]);

test('names that may be entered are the givens and those carried from givens', () => {
  expect(listGivens(BOOK, '10-shaft')).toEqual(['spin', 'ratio', 'spare', 'sizes']);
  expect(listGivens(BOOK, '20-wheel')).toEqual(['spin', 'gear']);
});

test('an entry goes into the frame', () => {
  const frame = createFrame(BOOK);
  expect(enterGivens(BOOK, frame, '20-wheel', [{ name: 'gear', entry: '3' }])).toEqual([]);
  expect(frame.memory.numbers[BOOK.find('10-shaft', 'ratio')!.index]).toBe(3);
});

test.each([
  ['spni', 'did you mean spin?'],
  ['sparr', 'did you mean spare?'],
  ['xyzzy', undefined],
])('%s is unknown; %s', (name, hint) => {
  const [refused] = enterGivens(BOOK, createFrame(BOOK), '10-shaft', [{ name, entry: '1' }]);
  const said = `sheet 10-shaft has no given called ${name}`;
  expect(refused!.problem).toMatchObject({
    code: 'unknown-given',
    message: hint === undefined ? said : `${said}; ${hint}`,
  });
  expect(refused!.cell).toBeUndefined();
});

test('one word of a long name is enough to be understood', () => {
  const text = '# A\n\n```given\nmeasured_rollout = 3 in\nrim_diameter = 4 in\n```\n';
  const book = linkBook([readSheet(text, 'a.md')]);
  const typed = [{ name: 'rolout', entry: '1' }];
  const [refused] = enterGivens(book, createFrame(book), 'a', typed);
  expect(refused!.problem.message).toMatch(/did you mean measured_rollout\?$/);
});
