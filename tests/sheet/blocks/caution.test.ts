import { expect, test } from 'vitest';
import { faultsOf, readBlock } from './made-block.ts';

const typesOf = (lines: readonly string[]) =>
  readBlock('caution', '"Eyes"', ...lines).tokens.map(({ type }) => type);

test('a caution holds Markdown under its title', () => {
  const lines = ['Goggles **on**.', '', '- Rag over the hole', '- Nobody in front'];
  expect(readBlock('caution', '"Eyes"', ...lines)).toMatchObject({ title: 'Eyes', problems: [] });
  expect(typesOf(lines)).toEqual(['paragraph', 'space', 'list']);
});

test('a caution without a title is called one', () => {
  expect(readBlock('caution', '', 'Goggles on.').title).toBe('Caution');
});

test('a heading that cannot be read does not cost the warning', () => {
  const found = readBlock('caution', 'Eyes', 'Goggles on.');
  expect(faultsOf(found)).toEqual(['unknown-clause 1:12']);
  expect(found.tokens).toHaveLength(1);
});

test.each([
  ['nothing', []],
  ['blanks and empty lines', ['', '   ', '']],
])('a caution that says nothing is a fault: %s', (_, lines) => {
  expect(faultsOf(readBlock('caution', '', ...lines))).toEqual(['missing-line 1:11']);
});

test('HTML is kept as HTML, for whoever shows it to refuse', () => {
  expect(typesOf(['<script>alert(1)</script>'])).toEqual(['html']);
});
