import type { Cell } from '../sheet/cell.ts';
import type { Spread } from '../sheet/spread/spread.ts';
import {
  describeShares,
  describeSpread,
  type SpreadWriting,
} from '../sheet/spread/spread-words.ts';
import { createSpreadWriting } from '../sheet/spread/spread-writing.ts';
import type { Desk } from './desk.ts';
import { fill, h } from './element.ts';
import { namesFor } from './element-names.ts';
import { createSimulation } from './simulation.ts';

/** Results whose doubt has been opened: it stays open while the readings change. */
const OPENED = new WeakSet<Cell>();
/** Which number of a list was looked at last, from 0. */
const CHOSEN = new WeakMap<Cell, number>();

/** How sure a result is: one line, and behind it whose doubt it is and the simulated picture. */
export function createSpreadLine(desk: Desk, cell: Cell): HTMLElement | undefined {
  const spreads = desk.spreadOf(cell.index);
  const [first] = spreads;
  if (first === undefined) return undefined;
  const writing = createSpreadWriting(desk.book, cell, desk.system());
  const isList = spreads.length > 1;
  const body = h('div');
  const more = h(
    'details',
    { class: 'doubt', open: OPENED.has(cell), on: { toggle: remember } },
    h('summary', {}, 'What matters most'),
    isList && createElementChoice(desk, cell, spreads.length, show),
    body,
  );
  show(chosenOf(cell, spreads.length));
  return createSure(isList ? listSpreads(spreads, writing) : describeSpread(first, writing), more);

  function show(element: number): void {
    const spread = spreads[element]!;
    fill(
      body,
      isList && h('p', {}, describeSpread(spread, writing)),
      h('p', {}, describeShares(spread, writing)),
      createBars(spread, writing),
      createSimulation(desk, cell, writing, element),
    );
  }

  function remember({ target }: Event): void {
    if ((target as HTMLDetailsElement).open) OPENED.add(cell);
    else OPENED.delete(cell);
  }
}

/** The list may have grown shorter since. */
function chosenOf(cell: Cell, count: number): number {
  return Math.min(CHOSEN.get(cell) ?? 0, count - 1);
}

/** Which number of a list the doubt is told of. */
function createElementChoice(
  desk: Desk,
  cell: Cell,
  count: number,
  show: (element: number) => void,
): HTMLElement {
  const names = namesFor(desk, cell) ?? Array.from({ length: count }, (_, i) => String(i + 1));
  const id = `doubt-${cell.index}`;
  const chosen = chosenOf(cell, count);
  const options = names.map((name, i) => h('option', { value: i, selected: i === chosen }, name));
  const select = h('select', { id, on: { change } }, ...options);

  function change(): void {
    CHOSEN.set(cell, Number(select.value));
    show(Number(select.value));
  }
  return h('p', { class: 'whose' }, h('label', { for: id }, 'Shown for'), ' ', select);
}

function createSure(text: string, more?: HTMLElement): HTMLElement {
  return h('div', { class: 'sure' }, h('p', {}, text), more);
}

function listSpreads(spreads: readonly Spread[], { show }: SpreadWriting): string {
  const worst = spreads.map(({ worst: { from, to } }) => show((to - from) / 2));
  return `worst case ${worst.map((one) => `±\u00a0${one}`).join(', ')}`;
}

/** Shares of the variance as bars, in words as well. */
function createBars({ shares }: Spread, { name }: SpreadWriting): HTMLElement {
  const rows = shares.map(({ cell, share }) => {
    const percent = share >= 0.001 ? `${Math.round(1000 * share) / 10} %` : 'nothing';
    const bar = h('meter', {
      min: 0,
      max: 1,
      value: share,
      'aria-label': `Share of ${name(cell)}`,
    });
    return h(
      'tr',
      {},
      h('th', { scope: 'row' }, name(cell)),
      h('td', {}, bar),
      h('td', {}, percent),
    );
  });
  return h(
    'table',
    { class: 'shares' },
    h('caption', {}, 'Share of the doubt (of the variance)'),
    h('tbody', {}, ...rows),
  );
}
