import type { Cell } from '../sheet/cell.ts';
import type { Spread } from '../sheet/spread/spread.ts';
import {
  describeShares,
  describeSpread,
  type SpreadWriting,
} from '../sheet/spread/spread-words.ts';
import { createSpreadWriting } from '../sheet/spread/spread-writing.ts';
import type { Desk } from './desk.ts';
import { h } from './element.ts';
import { createSimulation } from './simulation.ts';

/** Results whose doubt has been opened: it stays open while the readings change. */
const OPENED = new WeakSet<Cell>();

/** How sure a result is: one line, and behind it whose doubt it is and the simulated picture. */
export function createSpreadLine(desk: Desk, cell: Cell): HTMLElement | undefined {
  const spreads = desk.spreadOf(cell.index);
  const [spread] = spreads;
  if (spread === undefined) return undefined;
  const writing = createSpreadWriting(desk.book, cell, desk.system());
  if (spreads.length > 1) return createSure(listSpreads(spreads, writing));
  const more = h(
    'details',
    { class: 'doubt', open: OPENED.has(cell), on: { toggle: remember } },
    h('summary', {}, 'What matters most'),
    h('p', {}, describeShares(spread, writing)),
    createBars(spread, writing),
    createSimulation(desk, cell, writing),
  );
  return createSure(describeSpread(spread, writing), more);

  function remember({ target }: Event): void {
    if ((target as HTMLDetailsElement).open) OPENED.add(cell);
    else OPENED.delete(cell);
  }
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
