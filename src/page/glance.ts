import type { Cell, Check } from '../sheet/cell.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { showValue } from '../sheet/show.ts';
import { signWords } from '../sheet/sign-words.ts';
import { checkId } from './check-id.ts';
import type { Desk } from './desk.ts';
import { fill, h } from './element.ts';
import { glanceAtCheck } from './glance-check.ts';
import { chooseResults } from './glance-results.ts';
import { createIcon } from './icon.ts';
import { sheetHref } from './link.ts';
import type { View } from './view.ts';

/** So many checks are shown while they pass; one that does not is always shown. */
const MOST_CHECKS = 6;
/** Two results beside many checks, more where there are few. */
const LEAST_RESULTS = 2;
const MOST_ITEMS = 8;

/**
 * Under the title: how the checks of the sheet stand and what it comes to, each a link to its
 * place. Undefined for a sheet that works nothing.
 */
export function createGlance(desk: Desk, sheet: Sheet): View | undefined {
  const checks = desk.book.checks.filter((check) => check.sheet === sheet.name);
  const room = Math.max(LEAST_RESULTS, MOST_ITEMS - Math.min(checks.length, MOST_CHECKS));
  const results = chooseResults(desk.book, sheet, room);
  if (checks.length + results.length === 0) return undefined;
  const tally = h('span', { class: 'glance-tally' });
  const list = h('ul');

  function refresh(): void {
    tally.textContent = tellTally(desk, checks);
    fill(
      list,
      ...chooseChecks(desk, checks).map((check) => createCheckItem(desk, sheet, check)),
      ...results.map((cell) => createResultItem(desk, sheet, cell)),
    );
  }

  refresh();
  const head = h(
    'p',
    { class: 'glance-head' },
    h('b', {}, 'At a glance'),
    tally,
    createWayToReadings(desk, sheet),
  );
  return {
    element: h('section', { class: 'glance', 'aria-label': 'At a glance' }, head, list),
    cells: [
      ...checks.flatMap(({ subject, inputs }) => [
        ...inputs,
        ...(subject === undefined ? [] : [subject]),
      ]),
      ...results.map(({ index }) => index),
    ],
    refresh,
  };
}

/** In the order of the sheet: all that do not pass, and as many of the others as there is room for. */
function chooseChecks(desk: Desk, checks: readonly Check[]): readonly Check[] {
  const passes = (check: Check) => desk.verdictOf(check).verdict === 'pass';
  let room = Math.max(0, MOST_CHECKS - checks.filter((check) => !passes(check)).length);
  return checks.filter((check) => !passes(check) || room-- > 0);
}

function tellTally(desk: Desk, checks: readonly Check[]): string {
  const count = (wanted: string) =>
    checks.filter((check) => desk.verdictOf(check).verdict === wanted).length;
  const [all, fails, unknown] = [checks.length, count('fail'), count('unknown')];
  if (all === 0) return '';
  if (fails + unknown === 0) return all === 1 ? 'The check passes' : `All ${all} checks pass`;
  const told = [
    `${all - fails - unknown} of ${all} checks pass`,
    ...(fails === 0 ? [] : [fails === 1 ? 'one fails' : `${fails} fail`]),
    ...(unknown === 0 ? [] : [`${unknown} cannot be told yet`]),
  ];
  return told.join(', ');
}

function createCheckItem(desk: Desk, sheet: Sheet, check: Check): HTMLElement {
  const { verdict, value, words } = glanceAtCheck(desk, check);
  return createItem(
    { href: sheetHref(sheet.name, checkId(check)), state: CLASSES[verdict] },
    check.statement.label,
    value,
    createIcon(verdict),
    h('span', {}, words),
  );
}

const CLASSES = { pass: 'passes', fail: 'fails', unknown: 'unknown' } as const;

function createResultItem(desk: Desk, sheet: Sheet, cell: Cell): HTMLElement {
  const { outcome, words } = readResult(desk, cell);
  return createItem(
    { href: sheetHref(sheet.name, cell.name), state: 'result' },
    cell.label,
    outcome,
    words !== undefined && h('span', {}, words),
  );
}

function readResult(desk: Desk, cell: Cell): { outcome: string; words: string | undefined } {
  const outcome = desk.outcomeOf(cell.index);
  if (outcome.state !== 'value') return { outcome: '–', words: 'no value yet' };
  const { text } = showValue(outcome.value, cell.kind!, cell.display, desk.system());
  const signs = cell.role === 'work' ? cell.statement.signs : {};
  return { outcome: text, words: signWords(signs, outcome.value as number, cell.display) };
}

function createItem(
  { href, state }: { readonly href: string; readonly state: string },
  label: string,
  value: string,
  ...words: readonly (Node | false)[]
): HTMLElement {
  const link = h(
    'a',
    { href, class: state },
    h('span', { class: 'glance-label' }, label),
    ' ',
    h('strong', {}, value),
    ' ',
    h('span', { class: 'glance-words' }, ...words),
  );
  return h('li', {}, link);
}

/** Who comes to measure need not read on to find the first field. */
function createWayToReadings(desk: Desk, sheet: Sheet): HTMLElement | undefined {
  const first = desk.book.cellsOf(sheet.name).find((cell) => cell.role === 'given' && cell.kind);
  if (first === undefined) return undefined;
  return h(
    'a',
    { class: 'to-readings', href: sheetHref(sheet.name, first.name) },
    'To the readings',
    createIcon('down'),
  );
}
