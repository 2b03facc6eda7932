import type { Check } from '../sheet/cell.ts';
import { type Compared, compareResults } from '../sheet/compare/compare.ts';
import { SAME } from '../sheet/compare/difference-words.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { verdictOf } from '../sheet/verdict.ts';
import type { Desk } from './desk.ts';
import { fill, h } from './element.ts';
import { createIcon } from './icon.ts';
import { createScrollBox } from './scroll-box.ts';
import type { ShownColumn } from './shown-column.ts';

export interface CompareTable {
  readonly element: HTMLElement;
  /** Mutates the table. */
  show(columns: readonly ShownColumn[]): void;
}

/** Results in columns, a row each, and the checks below; which rows stand there can be chosen. */
export function createCompareTable(desk: Desk, sheet: Sheet): CompareTable {
  const results = desk.book
    .cellsOf(sheet.name)
    .filter(({ role, kind }) => (role === 'work' || role === 'stack') && kind !== undefined);
  const chosen = new Set<number>();
  let shown: readonly ShownColumn[] = [];
  const table = h('div');
  const choices = results.map(({ index, label }) => {
    const box = h('input', {
      type: 'checkbox',
      id: `compare-${index}`,
      on: {
        change: () => {
          if (box.checked) chosen.add(index);
          else chosen.delete(index);
          draw();
        },
      },
    });
    return h('li', {}, box, h('label', { for: `compare-${index}` }, label));
  });
  const choice = h(
    'details',
    {},
    h('summary', {}, 'Choose results'),
    h('p', {}, 'With none ticked, those that differ are shown.'),
    h('ul', { class: 'choices' }, ...choices),
  );

  function draw(): void {
    const cells = results.filter(({ index }) => chosen.size === 0 || chosen.has(index));
    const frames = shown.map(({ frame }) => frame);
    const rows = compareResults(
      desk.book,
      frames,
      cells.map(({ index }) => index),
      desk.system(),
    ).filter(({ differs }) => chosen.size > 0 || differs);
    const checks = desk.book.checks.filter((check) => check.sheet === sheet.name);
    fill(
      table,
      rows.length === 0
        ? h('p', {}, 'Nothing on this sheet comes out different.')
        : drawTable(rows, shown),
      checks.length > 0 && drawChecks(desk, checks, shown),
    );
  }

  return {
    element: h('div', {}, table, choice),
    show(columns) {
      shown = columns;
      draw();
    },
  };
}

function createHead(columns: readonly ShownColumn[], what: string): HTMLElement {
  const heads = columns.map(({ name }) => h('th', { scope: 'col' }, name));
  return h('thead', {}, h('tr', {}, h('th', { scope: 'col' }, what), ...heads));
}

function drawTable(rows: readonly Compared[], columns: readonly ShownColumn[]): HTMLElement {
  const body = rows.map(({ cell, columns: values }) =>
    h(
      'tr',
      {},
      h('th', { scope: 'row' }, cell.label),
      ...values.map(({ text, difference }) =>
        h(
          'td',
          {},
          h('span', { class: 'compared-value' }, text),
          difference !== undefined &&
            h('span', { class: difference === SAME ? 'same' : 'differs' }, difference),
        ),
      ),
    ),
  );
  const caption = h('caption', {}, 'Results side by side');
  const table = h('table', {}, caption, createHead(columns, 'Result'), h('tbody', {}, ...body));
  return createScrollBox('wide', 'Results side by side', table);
}

const WORDS = { pass: 'passes', fail: 'fails', unknown: 'cannot be told' } as const;
const CLASSES = { pass: 'passes', fail: 'fails', unknown: 'unknown' } as const;

function drawChecks(
  desk: Desk,
  checks: readonly Check[],
  columns: readonly ShownColumn[],
): HTMLElement {
  const body = checks.map((check) =>
    h(
      'tr',
      {},
      h('th', { scope: 'row' }, check.statement.label),
      ...columns.map(({ frame }) => {
        const verdict =
          frame === undefined ? 'unknown' : verdictOf(desk.book, frame, check).verdict;
        return h(
          'td',
          {},
          h(
            'span',
            { class: `verdict ${CLASSES[verdict]}` },
            createIcon(verdict),
            h('span', {}, WORDS[verdict]),
          ),
        );
      }),
    ),
  );
  const caption = h('caption', {}, 'Checks side by side');
  const table = h('table', {}, caption, createHead(columns, 'Check'), h('tbody', {}, ...body));
  return createScrollBox('wide', 'Checks side by side', table);
}
