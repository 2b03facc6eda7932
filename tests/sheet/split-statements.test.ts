import fc from 'fast-check';
import { expect, test } from 'vitest';
import { splitStatements } from '../../src/sheet/split-statements.ts';

const split = (body: string, before = '', after = '') =>
  splitStatements(before + body + after, before.length, before.length + body.length).map(
    ({ from, to }) => (before + body + after).slice(from, to),
  );

test.each([
  ['nothing', '', []],
  ['blanks and empty lines', ' \n\n  ', []],
  ['one line', 'a = 1', ['a = 1']],
  ['two lines', 'a = 1\nb = 2\n', ['a = 1', 'b = 2']],
  ['a line carried on', 'a = 1\n  + 2\nb = 2', ['a = 1\n  + 2', 'b = 2']],
  ['a line carried on by a tab', 'a = 1\n\t+ 2', ['a = 1\n\t+ 2']],
  ['an empty line in between does not end a statement', 'a = 1\n\n  + 2', ['a = 1\n\n  + 2']],
  ['notes between statements', '# one\na = 1\n# two\nb = 2\n  # three\n', ['a = 1', 'b = 2']],
  ['a note behind a statement belongs to its line', 'a = 1 # one', ['a = 1 # one']],
  ['a margin', '  a = 1\n    + 2\n  b = 2\n', ['a = 1\n    + 2', 'b = 2']],
  [
    'a margin set by the first line that says something',
    '# x\n\n  a = 1\n  b = 2',
    ['a = 1', 'b = 2'],
  ],
  ['a line left of the margin', '  a = 1\nb = 2', ['a = 1', 'b = 2']],
])('%s', (_, body, statements) => {
  expect(split(body)).toEqual(statements);
});

test('what stands before and behind the body is left alone', () => {
  expect(split('a = 1\n', 'x = 0\n', '  + 2\n')).toEqual(['a = 1']);
});

test('statements follow one another, and no letter outside of notes is lost', () => {
  const line = fc.constantFrom('a = 1', '  + 2', '', '   ', 'b', '\tc', 'd # e');
  fc.assert(
    fc.property(fc.array(line, { maxLength: 8 }), (lines) => {
      const body = lines.join('\n');
      const found = splitStatements(body, 0, body.length);
      found.forEach(({ from, to }, i) => {
        expect(from).toBeGreaterThanOrEqual(i === 0 ? 0 : found[i - 1]!.to);
        expect(to).toBeGreaterThan(from);
      });
      const kept = found.map(({ from, to }) => body.slice(from, to)).join('');
      expect(kept.replaceAll(/\s/g, '')).toBe(body.replaceAll(/\s/g, ''));
    }),
  );
});
