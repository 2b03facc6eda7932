import { readChain } from '../sheet/read-chain.ts';
import type { Sheet, StackBlock } from '../sheet/sheet.ts';
import { createAnswer } from './answer.ts';
import { carriedNotes } from './carried.ts';
import { type Desk, findCell } from './desk.ts';
import { createDrawn } from './drawn.ts';
import { fill, h } from './element.ts';
import { loadChain } from './load-drawings.ts';
import { createRow, sourceNote } from './margin.ts';
import { createResultTools } from './result-tools.ts';
import type { View } from './view.ts';
import { createTrouble } from './waits.ts';

/** A chain of dimensions drawn to scale, closing dimension last, and the sum below it. */
export function createStack(desk: Desk, sheet: Sheet, block: StackBlock): View {
  const cell = block.stack && findCell(desk, sheet.name, block.stack.name);
  if (cell?.role !== 'stack' || cell.statement !== block.stack) {
    return { element: h('div'), cells: [], refresh: () => {} };
  }
  const drawn = createDrawn('drawn', loadChain, (drawChain, width) =>
    drawChain(readChain(cell, desk), { document, width, idPrefix: `stack-${cell.name}` }),
  );
  const answer = h('div');
  const tools = createResultTools(desk, cell);
  const figure = h(
    'figure',
    { class: 'stack', id: cell.name, tabindex: -1 },
    drawn.element,
    h('div', { class: 'sum' }, answer, tools.element),
  );

  function refresh(): void {
    const outcome = desk.outcomeOf(cell!.index);
    const shown =
      outcome.state === 'value'
        ? createAnswer(cell!, outcome.value, desk.system(), undefined)
        : createTrouble(desk, cell!);
    const sure =
      outcome.state === 'value' ? desk.doubt()?.createSpreadLine(desk, cell!) : undefined;
    fill(answer, h('p', { class: 'work-name' }, cell!.label), shown, sure);
    tools.refresh();
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
