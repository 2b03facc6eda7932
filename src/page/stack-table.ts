import type { Cell } from '../sheet/cell.ts';
import { createSpreadWriting } from '../sheet/spread/spread-writing.ts';
import {
  addTolerances,
  hasRepeated,
  STACK_SAMPLES,
  STACK_SEED,
  type StackMethod,
} from '../sheet/spread/stack-methods.ts';
import type { Desk } from './desk.ts';
import { fill, h } from './element.ts';
import type { View } from './view.ts';

const NAMES: Readonly<Record<StackMethod['method'], string>> = {
  worst: 'Worst case: all to one side',
  squares: 'Root sum square',
  simulated: `Monte Carlo, 95 % of ${STACK_SAMPLES} draws, seed ${STACK_SEED}`,
};

const REPEATED =
  'A reading that was repeated counts in the first two by how far its readings lie apart; it is drawn by Student’s t, which for a few readings reaches further.';

/** A stack by the three ways in which tolerances are added up, one beside the other. */
export function createStackTable(desk: Desk, cell: Cell): View {
  const body = h('tbody');
  const note = h('p', { class: 'hint' }, REPEATED);
  const heads = ['Added up by', 'From', 'To', '±'].map((word) => h('th', { scope: 'col' }, word));
  const table = h(
    'table',
    {},
    h('caption', {}, `${cell.label}, tolerances added up`),
    h('thead', {}, h('tr', {}, ...heads)),
    body,
  );

  function refresh(): void {
    const { show } = createSpreadWriting(desk.book, cell, desk.system());
    const methods = addTolerances(desk.book, desk.frame(), cell.index);
    const none = h('tr', {}, h('td', { colspan: 4 }, 'Nothing in this stack has a tolerance yet.'));
    const rows = methods.map(({ method, from, to }) =>
      h(
        'tr',
        {},
        h('th', { scope: 'row' }, NAMES[method]),
        ...[from, to, (to - from) / 2].map((value) => h('td', {}, show(value))),
      ),
    );
    fill(body, ...(rows.length > 0 ? rows : [none]));
    note.hidden = !hasRepeated(desk.book, desk.frame(), cell.index);
  }

  refresh();
  return { element: h('div', { class: 'wide' }, table, note), cells: [cell.index], refresh };
}
