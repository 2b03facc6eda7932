import { expect, test } from 'vitest';
import { createCursor, ReadFault } from '../../src/language/cursor.ts';
import { readEquals, readName, readNewName } from '../../src/sheet/read-name.ts';

const cursorOver = (text: string) => createCursor(text, 'sheet', 0, text.length);

function told(work: () => unknown): string {
  try {
    work();
  } catch (fault) {
    if (fault instanceof ReadFault) return `${fault.problem.code}: ${fault.problem.message}`;
    throw fault;
  }
  return 'taken';
}

test('a name is taken with its place, and the cursor stands behind it', () => {
  const cursor = cursorOver('  gap_2 = 3');
  expect(readName(cursor, 'a name')).toEqual({ type: 'name', name: 'gap_2', from: 2, to: 7 });
  readEquals(cursor);
  expect(cursor.peek()).toMatchObject({ type: 'quantity', value: 3 });
});

test.each([
  ['', 'unexpected-end: expected a name, but the line ends here'],
  ['3', 'unexpected-word: expected a name, found the number 3'],
  ['"gap"', 'unexpected-word: expected a name, found the text "gap"'],
  [
    'Gap',
    'misspelt-name: "Gap" is no name: names are lower-case letters, digits and underscores, such as gap',
  ],
])('"%s" is no name', (text, problem) => {
  expect(told(() => readName(cursorOver(text), 'a name'))).toBe(problem);
});

test.each([
  ['in', 'a unit'],
  ['if', 'a word of the language'],
  ['pi', 'a word of the language'],
  ['blank', 'a word of the language'],
])('%s can be referred to but names nothing new: it is %s', (word, role) => {
  expect(told(() => readName(cursorOver(word), 'a name'))).toBe('taken');
  expect(told(() => readNewName(cursorOver(word), 'a name'))).toBe(
    `reserved-name: "${word}" is ${role} and cannot name a value; choose another name`,
  );
});

test.each(['gap', 'index', 'constructor', 'abs'])('%s is free to name a value', (word) => {
  expect(told(() => readNewName(cursorOver(word), 'a name'))).toBe('taken');
});

test.each([
  ['3', 'found the number 3'],
  ['', 'but the line ends here'],
  ['<= 3', 'found "<="'],
])('behind a name %s is no equals sign', (text, found) => {
  expect(told(() => readEquals(cursorOver(text)))).toContain(found);
});
