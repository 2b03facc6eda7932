import { expect, test } from 'vitest';
import { createFrame } from '../../src/sheet/create-frame.ts';
import { enterGiven } from '../../src/sheet/enter.ts';
import { copyFrame } from '../../src/sheet/frame.ts';
import { solve } from '../../src/sheet/solve.ts';
import { block, makeSheet } from './made-book.ts';

const { book, cell } = makeSheet(
  block('given', 'gap = 3', 'sizes = [1, 2]') + block('work', 'twice = gap * 2'),
);

test('a copy holds what the first holds', () => {
  const frame = createFrame(book);
  solve(book, frame);
  expect(copyFrame(frame)).toEqual(frame);
});

test('what is entered and worked in a copy, the first does not know of', () => {
  const frame = createFrame(book);
  solve(book, frame);
  const before = structuredClone(frame);
  const copy = copyFrame(frame);
  for (const [name, text] of [
    ['gap', ''],
    ['sizes', '[9]'],
  ] as const)
    enterGiven(book, copy, cell(name).index, { text });
  solve(book, copy);
  expect(frame).toEqual(before);
  expect(copy).not.toEqual(before);
});
