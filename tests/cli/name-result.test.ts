import { expect, test } from 'vitest';
import { nameResult } from '../../src/cli/name-result.ts';
import { block, makeSheet } from '../sheet/made-book.ts';

const { book, cell } = makeSheet(
  block('given', 'wide = 1 in') + block('work', 'twice = 2 * wide', 'wrong = wide + 1 rpm'),
);

test('a value is found by its name', () => {
  expect(nameResult(book, 'made', 'twice')).toBe(cell('twice'));
});

test('a name that is not there is told, with names like it', () => {
  expect(nameResult(book, 'made', 'twcie')).toBe('sheet made has no "twcie"; did you mean twice?');
});

test('a value with an error of its own is told with it', () => {
  expect(nameResult(book, 'made', 'wrong')).toMatch(/^wrong has an error of its own: cannot add/);
});
