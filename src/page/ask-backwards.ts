import type { Cell, GivenCell } from '../sheet/cell.ts';
import { elementNames } from '../sheet/element-names.ts';
import { type Asked, listAskable, understandQuestion } from '../sheet/find/ask.ts';
import { findGiven } from '../sheet/find/find-given.ts';
import { createFindShow } from '../sheet/find/find-show.ts';
import { describeFound, describeRows } from '../sheet/find/find-words.ts';
import { tryRows } from '../sheet/find/try-rows.ts';
import { displayIn } from '../sheet/show.ts';
import { formatUnit } from '../units/format-unit.ts';
import { titleOf } from './carried.ts';
import type { Desk } from './desk.ts';
import { fill, h } from './element.ts';
import type { View } from './view.ts';

/** Sizes worth showing beside an exact answer. */
const MOST_STOCKED = 6;

/** A question about one result: what should it be, and which reading is to make it so? */
export function createAsk(desk: Desk, result: Cell): View {
  const { book } = desk;
  const givens = listAskable(book, result);
  if (givens.length === 0) {
    const words = 'It hangs on no single figure that is measured or chosen.';
    return { element: h('p', {}, words), cells: [], refresh: () => {} };
  }
  const id = `ask-${result.index}`;
  const element = h('select', { id: `${id}-element` });
  const given = h(
    'select',
    { id: `${id}-given`, on: { change: refresh } },
    ...givens.map((cell) => h('option', { value: cell.index }, nameGiven(desk, result, cell))),
  );
  const target = createInput(`${id}-target`);
  const from = createInput(`${id}-from`);
  const to = createInput(`${id}-to`);
  const [unit, fromUnit, toUnit] = [h('span'), h('span'), h('span')];
  const told = h('div', { class: 'asked', role: 'status' });
  const isList = result.kind?.type === 'list';
  let isAsked = false;

  function chosen(): GivenCell {
    return givens.find(({ index }) => String(index) === given.value) ?? givens[0]!;
  }

  function refresh(): void {
    const shown = (cell: Cell) => displayIn(cell.display, desk.system()).unit;
    const symbol = (cell: Cell) => ` ${shown(cell) === undefined ? '' : formatUnit(shown(cell)!)}`;
    unit.textContent = symbol(result);
    fromUnit.textContent = symbol(chosen());
    toUnit.textContent = symbol(chosen());
    offerElements();
    range.hidden = chosen().kind?.type !== 'quantity';
    if (isAsked) answer();
  }

  /** Mutates the choice: a list may have other elements than before. */
  function offerElements(): void {
    if (!isList) return;
    const names = elementNames(book, desk.frame(), result);
    const outcome = desk.outcomeOf(result.index);
    const length =
      outcome.state === 'value' ? (outcome.value as Float64Array).length : element.length;
    const before = element.value;
    const options = Array.from({ length }, (_, i) =>
      h('option', { value: i }, names?.[i] ?? String(i + 1)),
    );
    fill(element, ...options);
    element.value = before !== '' && Number(before) < length ? before : String(length - 1);
  }

  function answer(): void {
    isAsked = true;
    const place = isList ? Number(element.value) : 0;
    const asked: Asked = {
      result,
      element: place,
      given: chosen(),
      target: target.value,
      from: from.value,
      to: to.value,
    };
    const name = isList ? element.selectedOptions[0]?.textContent : undefined;
    fill(told, ...tell(desk, asked, place, name ?? undefined));
  }

  const range = h(
    'p',
    {},
    h('label', { for: from.id }, 'Searched from'),
    from,
    fromUnit,
    h('label', { for: to.id }, 'to'),
    to,
    toUnit,
    h('span', { class: 'hint' }, ' Left open: its own range.'),
  );
  const form = h(
    'form',
    {
      class: 'ask',
      on: {
        submit: (event) => {
          event.preventDefault();
          answer();
        },
      },
    },
    ...(isList ? [h('p', {}, h('label', { for: element.id }, 'Which of it'), element)] : []),
    h('p', {}, h('label', { for: target.id }, 'It should be'), target, unit),
    h('p', {}, h('label', { for: given.id }, 'By way of'), given),
    range,
    h('button', { type: 'submit' }, 'Find it'),
  );
  refresh();
  return { element: h('div', {}, form, told), cells: [result.index], refresh };
}

function createInput(id: string): HTMLInputElement {
  return h('input', { id, type: 'text', autocomplete: 'off', spellcheck: 'false' });
}

function nameGiven(desk: Desk, result: Cell, { label, sheet }: GivenCell): string {
  return sheet === result.sheet ? label : `${label} (${titleOf(desk, sheet)})`;
}

/** The answer in words, and what is to be had beside it. */
function tell(
  desk: Desk,
  asked: Asked,
  place: number,
  name: string | undefined,
): readonly HTMLElement[] {
  const { book } = desk;
  const { given, result } = asked;
  const frame = desk.frame();
  const understood = understandQuestion(book, frame, asked, desk.system());
  if (understood.state === 'refused') {
    return [h('p', { class: 'error' }, h('b', {}, 'Error: '), understood.sentence)];
  }
  const show = createFindShow(given, result, name, desk.system());
  const target = understood.state === 'rows' ? understood.target : understood.question.target;
  const rows = tryRows(book, frame, given, result, target, place);
  const tried = rows.map(({ row, result: value }) =>
    Number.isFinite(value) ? `${row} gives ${show.result(value)}` : `${row} gives no value`,
  );
  if (understood.state === 'rows') {
    return [createFound(describeRows(rows, target, show)), ...createStocked(tried)];
  }
  const found = findGiven(book, frame, understood.question);
  const sizes = found.stocked.map(
    (size) => `${show.given(size.given)} gives ${show.result(size.result)}`,
  );
  const words = createFound(describeFound(found, show));
  return [words, ...createStocked(tried.length > 0 ? tried : sizes)];
}

function createFound(words: string): HTMLElement {
  return h('p', { class: 'found' }, words);
}

function createStocked(lines: readonly string[]): readonly HTMLElement[] {
  if (lines.length === 0) return [];
  const shown = lines.slice(0, MOST_STOCKED);
  return [h('ul', { class: 'stocked' }, ...shown.map((line) => h('li', {}, line)))];
}
