import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createCursor } from '../../src/language/cursor.ts';
import { parseExpression, readExpression, readOperand } from '../../src/language/parse.ts';
import { sketchTree } from './sketch-tree.ts';

const codeOf = (source: string) => {
  const read = parseExpression(source, 'sheet');
  return 'code' in read ? read.code : undefined;
};

describe('hostile depths and lengths', () => {
  const deep = (open: string, close: string, count = 10_000) =>
    `${open.repeat(count)}1${close.repeat(count)}`;

  test.each([
    ['brackets', deep('(', ')')],
    ['brackets that never close', '('.repeat(10_000)],
    ['lists', deep('[', ']')],
    ['calls', deep('abs(', ')')],
    ['named arguments', deep('abs(value: ', ')')],
    ['minus signs', deep('-', '')],
    ['plus signs', deep('+', '')],
    ['negations', deep('not ', '')],
    ['powers', deep('2^', '')],
    ['choices', deep('if ', ' then 1 else 2')],
    ['fallbacks', deep('a otherwise ', '')],
    ['else after else', deep('if true then 1 else ', '')],
  ])('10 000 %s inside one another are refused with a sentence', (_, source) => {
    expect(codeOf(source)).toBe('too-deep');
  });

  test('a hundred are read', () => {
    expect(codeOf(deep('(', ')', 99))).toBeUndefined();
    expect(codeOf(deep('(', ')', 101))).toBe('too-deep');
  });

  test.each([
    ['a sum', Array.from({ length: 10_000 }, () => '1').join('+')],
    ['a list', `[${Array.from({ length: 10_000 }, () => '1').join(',')}]`],
  ])('%s of 10 000 parts is refused with a sentence', (_, source) => {
    expect(codeOf(source)).toBe('too-long');
  });

  test.each([
    ['digits', '1'.repeat(100_000), 'malformed-number'],
    ['letters', 'a'.repeat(100_000), undefined],
    ['quotation marks', '"'.repeat(100_001), 'unexpected-word'],
    ['blanks', ' '.repeat(100_000), 'unexpected-end'],
    ['commas', ','.repeat(100_000), 'unexpected-word'],
    ['points', '.'.repeat(100_000), 'unexpected-word'],
    ['number signs', '#'.repeat(100_000), 'unexpected-end'],
  ])('100 000 %s', (_, source, code) => {
    expect(codeOf(source)).toBe(code);
  });
});

test('any text at all is read or refused, never thrown at the caller', () => {
  const word = fc.constantFrom(
    ...['if', 'then', 'else', 'and', 'not', 'otherwise', 'gap', 'max', 'pi', 'true', 'in', 'x'],
    ...['(', ')', '[', ']', ',', ':', '.', '+', '-', '*', '/', '^', '<', '=', '"', '#', '\n'],
    ...['3', '1/8', '2.5 in', '°', '%', '±', '×', '1e', '..'],
  );
  fc.assert(
    fc.property(
      fc.array(word, { maxLength: 12 }),
      fc.constantFrom('sheet', 'entry'),
      (words, mode) => {
        const source = words.join(' ');
        const read = parseExpression(source, mode as 'sheet');
        const { from, to } = read;
        expect(from).toBeGreaterThanOrEqual(0);
        expect(to).toBeLessThanOrEqual(source.length);
        expect(from).toBeLessThanOrEqual(to);
      },
    ),
    { numRuns: 3000 },
  );
});

describe('reading from within a statement', () => {
  test('an expression ends before what belongs to the statement', () => {
    const cursor = createCursor('gap + 1 in "Label" as mm', 'sheet');
    expect(sketchTree(readExpression(cursor))).toBe('(+ gap 1_in)');
    expect(cursor.peek()).toMatchObject({ type: 'text', value: 'Label' });
  });

  test('an operand ends before and, to and a comparison', () => {
    for (const rest of ['and 4 in', 'to 4 in', '< 4 in', 'otherwise 4 in']) {
      const cursor = createCursor(`gap * 2 ${rest}`, 'sheet');
      expect(sketchTree(readOperand(cursor))).toBe('(* gap 2)');
      expect(cursor.position()).toBe(8);
    }
  });
});

test('an entry holds no names', () => {
  expect(parseExpression('gap + 1', 'entry')).toMatchObject({ code: 'name-in-entry', from: 0 });
});

test('brackets belong to the place of what they hold', () => {
  expect(parseExpression(' (1 + 2) ', 'sheet')).toMatchObject({ from: 1, to: 8 });
});
