import type { Cell, Check } from '../sheet/cell.ts';
import { readGauge, showAs } from '../sheet/read-gauge.ts';
import type { CheckBlock } from '../sheet/sheet.ts';
import { meaningOf } from '../sheet/verdict.ts';
import { describeVerdict } from '../sheet/verdict-words.ts';
import { checkId } from './check-id.ts';
import { createCheckTable } from './check-table.ts';
import type { Desk } from './desk.ts';
import { createDrawn } from './drawn.ts';
import { fill, h } from './element.ts';
import { namesFor } from './element-names.ts';
import { createIcon } from './icon.ts';
import { loadGauge } from './load-drawings.ts';
import { createRow, sourceNote } from './margin.ts';
import type { View } from './view.ts';
import { createTrouble } from './waits.ts';

/** The checks of a block: gauges, or a table of one line each. */
export function createChecks(desk: Desk, block: CheckBlock): View {
  return block.layout === 'table' ? createCheckTable(desk, block) : createGauges(desk, block);
}

/** Limit gauges: each check's window to scale, the value on it, and the verdict in words. */
function createGauges(desk: Desk, block: CheckBlock): View {
  const views = block.statements.flatMap((statement) => {
    const check = desk.book.checks.find((one) => one.statement === statement);
    const subject = check?.subject === undefined ? undefined : desk.book.cells[check.subject];
    return check && subject ? [createCheck(desk, check, subject)] : [];
  });
  return {
    element: h(
      'div',
      { class: 'block', role: 'group', 'aria-label': 'Check' },
      ...views.map((view) => view.element),
    ),
    cells: views.flatMap((view) => view.cells),
    refresh: () => views.forEach((view) => void view.refresh()),
    dispose: () => views.forEach((view) => void view.dispose?.()),
  };
}

function createCheck(desk: Desk, check: Check, subject: Cell): View {
  const drawn = createDrawn('drawn', loadGauge, (drawGauge, width) =>
    drawGauge(readGauge(check, subject, desk), {
      document,
      width,
      idPrefix: `check-${check.index}`,
    }),
  );
  const words = h('div');
  const figure = h(
    'figure',
    { class: 'check', id: checkId(check), tabindex: -1 },
    h('figcaption', { class: 'check-name' }, check.statement.label),
    drawn.element,
    words,
  );

  function refresh(): void {
    fill(words, ...createVerdict(desk, check, subject));
    drawn.redraw();
  }

  refresh();
  return {
    element: createRow(figure, sourceNote(check.statement.source)),
    cells: [subject.index, ...check.inputs],
    refresh,
    dispose: drawn.dispose,
  };
}

const CLASSES = { pass: 'passes', fail: 'fails', unknown: 'unknown' } as const;

function createVerdict(desk: Desk, check: Check, subject: Cell): (HTMLElement | undefined)[] {
  const verdict = desk.verdictOf(check);
  const names = namesFor(desk, subject);
  const text = describeVerdict(verdict, {
    show: showAs(subject, desk),
    name: (place) => names?.[place] ?? `no. ${place + 1}`,
  });
  const line = h(
    'p',
    { class: `verdict ${CLASSES[verdict.verdict]}` },
    createIcon(verdict.verdict),
    h('span', {}, text),
  );
  const spreads = desk.spreadOf(subject.index);
  const confidence = desk.doubt()?.describeVerdictUnderDoubt(verdict, spreads);
  const sure = confidence === undefined ? undefined : h('p', { class: 'confidence' }, confidence);
  const words = meaningOf(check, verdict);
  const meaning = words === undefined ? undefined : h('p', { class: 'meaning' }, words);
  const trouble = verdict.verdict === 'unknown' ? createTrouble(desk, subject) : undefined;
  return [line, sure, meaning, trouble];
}
