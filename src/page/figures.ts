import { createFigureTable, type FigureTable } from '../sheet/figure-table.ts';
import { originOf } from '../sheet/origin.ts';
import type { FiguresBlock } from '../sheet/sheet.ts';
import type { Desk } from './desk.ts';
import { fill, h } from './element.ts';
import { sheetHref } from './link.ts';
import { createScrollBox } from './scroll-box.ts';
import type { View } from './view.ts';

/** Figures set out as a table, ready to be set in print. */
export function createFigures(desk: Desk, block: FiguresBlock): View {
  const figures = desk.book.figures.find(({ statement }) => statement === block.figures);
  if (figures?.linked === undefined) return createFault(figures?.problem?.message);
  const { linked, statement } = figures;
  const table = h('table', { class: 'figures' });

  function refresh(): void {
    const set = createFigureTable(statement.title, linked!, {
      ...desk,
      isEntered: (cell) => desk.entryOf(cell) !== undefined,
    });
    const hrefs = linked!.figures.map(({ cell }) => hrefOfOrigin(desk, cell));
    fill(table, ...createParts(set, linked!.layout === 'rows' ? hrefs : []));
  }

  refresh();
  return {
    element: createScrollBox('wide', statement.title, table),
    cells: linked.figures.map(({ cell }) => cell),
    refresh,
  };
}

/** The sheet's list of problems has it too; here it stands where the table would. */
function createFault(message: string | undefined): View {
  const words = message === undefined ? '' : `There is no table: ${message}.`;
  return { element: h('p', { class: 'trouble' }, words), cells: [], refresh: () => {} };
}

/** A name or a use stands among numbers now and then. */
function isWords(text: string): boolean {
  return /^\p{L}/u.test(text);
}

function hrefOfOrigin({ book }: Desk, index: number): string {
  const cell = book.cells[index]!;
  const { sheet, name } = originOf(book, cell) ?? cell;
  return sheetHref(sheet, name);
}

/** @param hrefs where the last cell of each row leads */
function createParts(
  { title, columns, rows }: FigureTable,
  hrefs: readonly string[],
): readonly HTMLElement[] {
  const head = columns.map(({ title: words, numeric }) =>
    h('th', { scope: 'col', class: numeric && 'number' }, words.replace(' %', '\u00A0%')),
  );
  const lines = rows.map((texts, row) => {
    const href = hrefs[row];
    const cells = texts.map((text, i) =>
      i === 0
        ? h('th', { scope: 'row' }, text)
        : h(
            'td',
            { class: columns[i]!.numeric && (isWords(text) ? 'words' : 'number') },
            i === texts.length - 1 && href !== undefined ? h('a', { href }, text) : text,
          ),
    );
    return h('tr', {}, ...cells);
  });
  return [h('caption', {}, title), h('thead', {}, h('tr', {}, ...head)), h('tbody', {}, ...lines)];
}
