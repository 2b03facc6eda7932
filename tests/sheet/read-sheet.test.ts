import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readSheet } from '../../src/sheet/read-sheet.ts';

const kindsOf = (source: string) => readSheet(source, 'made.md').parts.map(({ kind }) => kind);
const faultsOf = (source: string) =>
  readSheet(source, 'made.md').problems.map(
    ({ code, place }) => `${code} ${place!.line}:${place!.column}`,
  );

describe('the name of a sheet', () => {
  test.each([
    ['notebooks/20-gearing.md', '20-gearing', 20],
    ['20-gearing.md', '20-gearing', 20],
    ['C:\\shop\\70-release-bearing.md', '70-release-bearing', 70],
    ['scratch.md', 'scratch', undefined],
    ['007.md', '007', 7],
    ['a.b.md', 'a.b', undefined],
    ['', '', undefined],
  ])('%s', (file, name, number) => {
    expect(readSheet('', file)).toMatchObject({ name, number, file });
  });
});

test.each([
  ['# Gearing\n\n## More', 'Gearing'],
  ['Words.\n\n## Gearing\n', 'Gearing'],
  ['Gearing\n=======\n', 'Gearing'],
  ['no heading', 'made'],
  ['```work\na = 1 # Not this\n```', 'made'],
  ['', 'made'],
])('the title of %j is %s', (source, title) => {
  expect(readSheet(source, 'made.md').title).toBe(title);
});

test('narrative and blocks keep the order of the page, each with its line', () => {
  const sheet = readSheet(
    '# A\n\nWords.\n\n```given\na = 1\n```\nMore.\n\n```work\nb = a\n```\nEnd.',
    'm',
  );
  expect(sheet.parts.map(({ kind, line }) => [kind, line])).toEqual([
    ['narrative', 1],
    ['given', 5],
    ['narrative', 8],
    ['work', 10],
    ['narrative', 13],
  ]);
});

test.each([
  ['three backticks', '```given\na = 1\n```', ['given']],
  ['four, with three inside', '````steps\n- ```x```\n````', ['steps']],
  ['tildes', '~~~work\na = 1\n~~~', ['work']],
  ['a blank before the word', '``` given\na = 1\n```', ['given']],
  ['three blanks before the fence', '   ```given\n   a = 1\n   ```', ['given']],
  ['a longer fence at the end', '```given\na = 1\n`````', ['given']],
  ['a block without a word', '```\na = 1\n```', ['narrative']],
  ['a block of another word', '```text\na = 1\n```', ['narrative']],
  ['a word that begins like one', '```givens\na = 1\n```', ['narrative']],
  ['four blanks: code, and only shown', '    ```given\n    a = 1\n    ```', ['narrative']],
  ['a block in a quotation is only shown', '> ```given\n> a = 1\n> ```', ['narrative']],
  ['nothing', '', []],
])('%s', (_, source, kinds) => {
  expect(kindsOf(source)).toEqual(kinds);
});

test('a block that never ends is told at its opening, and read to the end of the file', () => {
  expect(faultsOf('Words.\n\n```given\na = 1')).toEqual(['unclosed-block 3:1']);
  expect(faultsOf('```given')).toEqual(['unclosed-block 1:1']);
  expect(readSheet('```given\na = 1', 'm').parts[0]).toMatchObject({
    statements: [{ name: 'a' }],
  });
});

test('a fence of the other kind, or a shorter one, ends no block', () => {
  expect(faultsOf('````given\na = 1\n```\n')).toContain('unclosed-block 1:1');
  expect(faultsOf('```given\na = 1\n~~~\n')).toContain('unclosed-block 1:1');
});

describe('line ends and marks of other machines', () => {
  const plain = '# A\n\n```given\na = 1\nb 2\n```\n\n```work\nc = a\n```\n';
  test.each([
    ['carriage return and line feed', plain.replaceAll('\n', '\r\n')],
    ['carriage return alone', plain.replaceAll('\n', '\r')],
    ['a byte order mark', `\uFEFF${plain}`],
  ])('%s change nothing', (_, source) => {
    expect(readSheet(source, 'made.md').source).toBe(plain);
    expect(faultsOf(source)).toEqual(faultsOf(plain));
    expect(faultsOf(source)).toEqual(['unexpected-word 5:3']);
  });
});

test('a script and a link that runs one stay text and tokens: nothing is carried out here', () => {
  const source = '<script>alert(1)</script>\n\n[go](javascript:alert(1))\n\n```given\na = 1\n```\n';
  const { parts, problems } = readSheet(source, 'made.md');
  expect(problems).toEqual([]);
  expect(parts.map(({ kind }) => kind)).toEqual(['narrative', 'given']);
  const [narrative] = parts;
  const raws = narrative?.kind === 'narrative' ? narrative.tokens.map(({ raw }) => raw) : [];
  expect(raws.join('')).toContain('<script>alert(1)</script>');
});

test('what is wrong in a block is a problem of the sheet, in the order of the page', () => {
  expect(faultsOf('```given\na 1\n```\n\n```work\n= 2\n```\n\n```chart\n```\n')).toEqual([
    'unexpected-word 2:3',
    'unexpected-word 6:1',
    'missing-name 9:9',
  ]);
});

test('every block of any page is found at its line, whatever stands around it', () => {
  const words = fc.constantFrom('', 'Words.', '# Head', '- item', '> said', '| a |', '***', '1. x');
  const piece = fc.record({ words: fc.array(words, { maxLength: 3 }), value: fc.nat(99) });
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 5 }), (pieces) => {
      const lines: string[] = [];
      const openings: number[] = [];
      for (const { words, value } of pieces) {
        // A line of words would take the fence of a list item or a quotation along.
        lines.push(...words, '', '<!-- -->', '');
        openings.push(lines.length + 1);
        lines.push('```given', `a = ${value}`, '```', '');
      }
      const blocks = readSheet(lines.join('\n'), 'm').parts.filter(({ kind }) => kind === 'given');
      expect(blocks.map(({ line }) => line)).toEqual(openings);
    }),
  );
});
