import type { ChainData, ChainTerm } from '../drawing/chain-data.ts';
import { printText } from '../language/print-text.ts';
import type { Cell, Formula } from '../sheet/cell.ts';
import type { Sheet, StackBlock, StackTerm } from '../sheet/sheet.ts';
import { showValue } from '../sheet/show.ts';
import { createAnswer } from './answer.ts';
import { carriedNotes } from './carried.ts';
import { type Desk, findCell } from './desk.ts';
import { createDrawn } from './drawn.ts';
import { fill, h } from './element.ts';
import { loadChain } from './load-drawings.ts';
import { createRow, sourceNote } from './margin.ts';
import { createSpreadLine } from './spread-line.ts';
import type { View } from './view.ts';
import { createTrouble } from './waits.ts';

type StackCell = Cell & { readonly role: 'stack' };

/** A chain of dimensions drawn to scale, closing dimension last, and the sum below it. */
export function createStack(desk: Desk, sheet: Sheet, block: StackBlock): View {
  const cell = block.stack && findCell(desk, sheet.name, block.stack.name);
  if (cell?.role !== 'stack' || cell.statement !== block.stack) {
    return { element: h('div'), cells: [], refresh: () => {} };
  }
  const drawn = createDrawn('drawn', loadChain, (drawChain, width) =>
    drawChain(readChain(desk, cell), { document, width, idPrefix: `stack-${cell.name}` }),
  );
  const answer = h('div', { class: 'sum' });
  const figure = h(
    'figure',
    { class: 'stack', id: cell.name, tabindex: -1 },
    drawn.element,
    answer,
  );

  function refresh(): void {
    const outcome = desk.outcomeOf(cell!.index);
    const shown =
      outcome.state === 'value'
        ? createAnswer(cell!, outcome.value, desk.system(), undefined)
        : createTrouble(desk, cell!);
    const sure = outcome.state === 'value' ? createSpreadLine(desk, cell!) : undefined;
    fill(answer, h('p', { class: 'work-name' }, cell!.label), shown, sure);
    drawn.redraw();
  }

  refresh();
  const notes = [...sourceNote(cell.source), ...carriedNotes(desk, cell)];
  return {
    element: h(
      'div',
      { class: 'block', role: 'group', 'aria-label': cell.label },
      createRow(figure, notes),
    ),
    cells: [cell.index],
    refresh,
    dispose: drawn.dispose,
  };
}

function readChain(desk: Desk, cell: StackCell): ChainData {
  const { statement, formula, terms } = cell;
  return {
    title: cell.label,
    terms: statement.terms.map((term, i) => readTerm(desk, cell, term, terms[i])),
    total: { label: statement.name.replaceAll('_', ' '), ...readNumber(desk, cell, formula) },
  };
}

function readTerm(
  desk: Desk,
  cell: StackCell,
  term: StackTerm,
  formula: Formula | undefined,
): ChainTerm {
  return { sign: term.sign, label: nameTerm(term), ...readNumber(desk, cell, formula) };
}

/** On the drawing there is room for a name, not for how to measure it. */
function nameTerm({ label, expression }: StackTerm): string {
  return label ?? printText(expression).replaceAll('_', ' ');
}

/** In the unit of the sum, so that all dimensions of the chain are to one scale. */
function readNumber(
  desk: Desk,
  cell: StackCell,
  formula: Formula | undefined,
): { value: number; text: string } {
  const value = formula === undefined ? Number.NaN : (desk.workOut(formula) as number);
  if (!Number.isFinite(value)) return { value: Number.NaN, text: '?' };
  return { value, text: showValue(value, formula!.kind, cell.display, desk.system()).text };
}
