import type { FigureTable } from '../sheet/figure-table.ts';
import { escapeXml } from './svg-tree.ts';

/** A table as Markdown; figures flush right. */
export function tableMarkdown({ title, columns, rows }: FigureTable): string {
  const line = (cells: readonly string[]) => `| ${cells.map(escapeMarkdown).join(' | ')} |`;
  const head = line(columns.map((column) => column.title));
  const rule = `| ${columns.map(({ numeric }) => (numeric ? '--:' : ':--')).join(' | ')} |`;
  return [`**${escapeMarkdown(title)}**`, '', head, rule, ...rows.map(line), ''].join('\n');
}

/** A table as HTML, without styles: it takes those of the page that it is put into. */
export function tableHTML({ title, columns, rows }: FigureTable): string {
  const align = (i: number) => (columns[i]!.numeric ? ' align="right"' : '');
  const head = columns.map(
    (column, i) => `<th scope="col"${align(i)}>${escapeXml(column.title)}</th>`,
  );
  const body = rows.map((cells) => {
    const texts = cells.map((text, i) =>
      i === 0
        ? `<th scope="row"${align(i)}>${escapeXml(text)}</th>`
        : `<td${align(i)}>${escapeXml(text)}</td>`,
    );
    return `<tr>${texts.join('')}</tr>`;
  });
  return [
    '<table>',
    `<caption>${escapeXml(title)}</caption>`,
    `<thead><tr>${head.join('')}</tr></thead>`,
    '<tbody>',
    ...body,
    '</tbody>',
    '</table>',
    '',
  ].join('\n');
}

/** What Markdown would read as marks is shown as it is. */
function escapeMarkdown(text: string): string {
  return text.replace(/[\\`*_{}[\]<>|#~]/g, '\\$&').replaceAll(/\s*[\r\n]+\s*/g, ' ');
}
