import { parseHTML } from 'linkedom';
import { marked } from 'marked';
import { expect, test } from 'vitest';
import { tableHTML, tableMarkdown } from '../../src/export/table-text.ts';

const TABLE = {
  title: 'Gears <5>',
  columns: [
    { title: 'Gear', numeric: false },
    { title: 'Speed | mph', numeric: true },
  ],
  rows: [
    ['*1st*', '38'],
    ['<b>2nd</b>', '62'],
  ],
};

function cellsOf(html: string): readonly (readonly string[])[] {
  const { document } = parseHTML(`<html><body>${html}</body></html>`);
  return [...document.querySelectorAll('tr')].map((row) =>
    [...row.children].map((cell) => cell.textContent ?? ''),
  );
}

const CELLS = [
  ['Gear', 'Speed | mph'],
  ['*1st*', '38'],
  ['<b>2nd</b>', '62'],
];

test('Markdown comes back from an independent reader with its marks as text', () => {
  expect(cellsOf(marked.parse(tableMarkdown(TABLE)) as string)).toEqual(CELLS);
});

test('HTML has a caption, heads and nothing that is live', () => {
  const html = tableHTML(TABLE);
  expect(cellsOf(html)).toEqual(CELLS);
  expect(html).toContain('<caption>Gears &lt;5&gt;</caption>');
  expect(html).not.toContain('<b>');
});
