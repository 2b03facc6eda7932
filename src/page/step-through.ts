import { mathElement, mathWords, printMath } from '../language/print-math.ts';
import { namesIn } from '../language/walk.ts';
import type { Cell } from '../sheet/cell.ts';
import { showValue } from '../sheet/show.ts';
import { listSupports, listWorking, type WorkedCell } from '../sheet/working.ts';
import { titleOf } from './carried.ts';
import type { Desk } from './desk.ts';
import { fill, h } from './element.ts';
import { sheetHref } from './link.ts';
import { createFormula } from './math.ts';
import { createNumberLeaves } from './number-leaves.ts';
import type { View } from './view.ts';

/**
 * The working of a result, one line at a time: formula, formula with the numbers in it, answer. Each line
 * opens to what it rests on.
 */
export function createStepThrough(desk: Desk, result: Cell): View {
  const working = listWorking(desk.book, result.index);
  const list = h('ol', { class: 'step-lines' });
  const status = h('p', { class: 'hint', role: 'status' });
  const next = createButton('Next line', () => show(shown + 1));
  const all = createButton('All lines', () => show(working.length));
  const again = createButton('From the start', () => show(1));
  let shown = 0;

  /** Mutates the list: lines that stand there stay, so that what was opened stays open. */
  function show(count: number): void {
    if (count < shown) fill(list);
    const there = count < shown ? 0 : shown;
    shown = Math.min(count, working.length);
    for (const line of working.slice(there, shown)) list.append(createLine(desk, result, line));
    const left = working.length - shown;
    next.disabled = left === 0;
    all.disabled = left === 0;
    again.disabled = working.length < 2;
    status.textContent = `Line ${shown} of ${working.length}${left === 0 ? ', the result' : ''}.`;
  }

  function refresh(): void {
    const count = shown;
    shown = 0;
    fill(list);
    show(count);
  }

  if (working.length === 0) {
    const words = h('p', {}, 'Nothing is worked here: the figure stands as it was entered.');
    return { element: words, cells: [], refresh: () => {} };
  }
  show(1);
  const buttons = h('div', { class: 'buttons' }, next, all, again);
  return { element: h('div', {}, list, status, buttons), cells: [result.index], refresh };
}

function createButton(words: string, act: () => void): HTMLButtonElement {
  return h('button', { type: 'button', on: { click: act } }, words);
}

function createLine(desk: Desk, result: Cell, cell: WorkedCell): HTMLElement {
  const supports = listSupports(desk.book, cell);
  const rests = h(
    'details',
    {},
    h('summary', {}, 'What it rests on'),
    h('ul', {}, ...supports.map((support) => createSupport(desk, result, support))),
  );
  return h(
    'li',
    {},
    h('p', { class: 'work-name' }, cell.label, ...whereFrom(desk, result, cell)),
    createEquation(desk, cell),
    h('p', { class: 'step-answer' }, h('strong', {}, tellValue(desk, cell))),
    supports.length > 0 && rests,
  );
}

/** Name = formula = formula with the numbers in it. */
function createEquation(desk: Desk, { name, sheet, formula }: WorkedCell): HTMLElement {
  const { tree } = formula;
  const equals = () => mathElement('mo', '=');
  const numbers =
    namesIn(tree).length === 0 ? [] : [equals(), printMath(tree, createNumberLeaves(desk, sheet))];
  return createFormula(
    mathElement(
      'math',
      mathElement(
        'mrow',
        mathWords(name.replaceAll('_', ' ')),
        equals(),
        printMath(tree),
        ...numbers,
      ),
    ),
  );
}

function createSupport(desk: Desk, result: Cell, cell: Cell): HTMLElement {
  const how = cell.role === 'given' ? cell.statement.how : undefined;
  const why = [kindOf(cell), how, cell.source === undefined ? undefined : `Source: ${cell.source}`];
  return h(
    'li',
    {},
    h('b', {}, `${cell.label}: ${tellValue(desk, cell)}`),
    ...whereFrom(desk, result, cell),
    `, ${joinSentences(why)}`,
  );
}

/** Sentences of a sheet end with a point of their own, or with none. */
function joinSentences(parts: readonly (string | undefined)[]): string {
  const said = parts.filter((part) => part !== undefined);
  return said.map((part, i) => (i < said.length - 1 ? part.replace(/\.?$/, '.') : part)).join(' ');
}

function kindOf({ role }: Cell): string {
  if (role === 'given') return 'measured or chosen';
  return role === 'table' ? 'a table' : 'worked out, above';
}

function whereFrom(desk: Desk, result: Cell, { sheet, name }: Cell): readonly (Node | string)[] {
  if (sheet === result.sheet) return [];
  return [' (', h('a', { href: sheetHref(sheet, name) }, titleOf(desk, sheet)), ')'];
}

function tellValue(desk: Desk, { index, kind, display }: Cell): string {
  const outcome = desk.outcomeOf(index);
  if (outcome.state === 'blank') return 'blank';
  if (outcome.state !== 'value') return outcome.problem.message;
  if (kind === undefined || kind.type === 'table') return 'its rows';
  return showValue(outcome.value, kind, display, desk.system()).text;
}
