import type { Variant } from '../job/record.ts';
import {
  adoptVariant,
  differenceIn,
  listBases,
  listDifferences,
  withBase,
  withDifference,
  withoutVariant,
  withVariant,
  withVariantNamed,
} from '../job/variants.ts';
import type { Cell, GivenCell } from '../sheet/cell.ts';
import { rowsOf } from '../sheet/enter.ts';
import { originOf } from '../sheet/origin.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { formatUnit } from '../units/format-unit.ts';
import type { Desk } from './desk.ts';
import { fill, h } from './element.ts';
import { formatEntry } from './field-unit.ts';
import type { ShownColumn } from './shown-column.ts';

export interface Proposals {
  readonly element: HTMLElement;
  /** Mutates the proposals. */
  show(columns: readonly ShownColumn[]): void;
}

/** The proposals of the job: what each has different, what it builds on, and what can be done with it. */
export function createProposals(desk: Desk, sheet: Sheet): Proposals {
  const list = h('div', { class: 'proposals' });
  const add = h(
    'button',
    {
      type: 'button',
      id: 'proposal-add',
      on: { click: () => desk.replace('add a proposal', withVariant(desk.job(), 'Proposal')) },
    },
    'Add a proposal',
  );

  return {
    element: h('div', {}, list, add),
    show(columns) {
      const focused = document.activeElement?.id;
      const { variants } = desk.job();
      fill(
        list,
        ...variants.map((variant, i) => {
          const faults = columns.find((column) => column.variant === variant.name)?.faults ?? [];
          return createProposal({ desk, sheet, variant, id: `proposal-${i}`, faults });
        }),
      );
      if (focused?.startsWith('proposal-')) document.getElementById(focused)?.focus();
    },
  };
}

interface ProposalOptions {
  readonly desk: Desk;
  readonly sheet: Sheet;
  readonly variant: Variant;
  readonly id: string;
  /** What is wrong with it, as sentences. */
  readonly faults: readonly string[];
}

function createProposal(options: ProposalOptions): HTMLElement {
  const { desk, variant, id, faults } = options;
  const { name } = variant;
  const fields = listDifferences(variant.entries).map((difference, i) => {
    const cell = originOf(desk.book, desk.book.find(difference.sheet, difference.given));
    return createDifference(options, difference, cell, `${id}-${i}`);
  });
  const rename = createText(`${id}-name`, name, (text) =>
    desk.replace(`call ${name} ${text}`, withVariantNamed(desk.job(), name, text)),
  );
  return h(
    'div',
    { class: 'proposal', role: 'group', 'aria-label': name },
    h('p', { class: 'proposal-name' }, h('label', { for: `${id}-name` }, 'Proposal'), rename),
    ...createBase(options),
    ...fields,
    createAdding(options),
    ...faults.map((fault) => h('p', { class: 'error' }, h('b', {}, 'Error: '), fault)),
    h(
      'div',
      { class: 'buttons' },
      h('button', { type: 'button', id: `${id}-adopt`, on: { click: adopt } }, 'Make it the job’s'),
      h(
        'button',
        {
          type: 'button',
          id: `${id}-remove`,
          on: { click: () => desk.replace(`remove ${name}`, withoutVariant(desk.job(), name)) },
        },
        'Remove',
      ),
    ),
  );

  function adopt(): void {
    const adopted = adoptVariant(desk.job(), name);
    if (adopted.state === 'resolved') desk.replace(`make ${name} the job’s`, adopted.job);
  }
}

/** What it builds on is asked only where there is something to build on, or it is gone. */
function createBase({ desk, variant, id }: ProposalOptions): readonly HTMLElement[] {
  const { name, base } = variant;
  const bases = listBases(desk.job(), name);
  if (bases.length === 0 && base === undefined) return [];
  const offered = base === undefined || bases.includes(base) ? bases : [...bases, base];
  const select = h(
    'select',
    {
      id: `${id}-base`,
      on: {
        change: () => {
          const wanted = select.value === '' ? undefined : select.value;
          desk.replace(
            `build ${name} on ${wanted ?? 'the job'}`,
            withBase(desk.job(), name, wanted),
          );
        },
      },
    },
    h('option', { value: '' }, 'the job'),
    ...offered.map((each) => h('option', { value: each, selected: each === base }, each)),
  );
  return [h('p', {}, h('label', { for: `${id}-base` }, 'Builds on'), ' ', select)];
}

interface OneDifference {
  readonly sheet: string;
  readonly given: string;
  readonly text: string;
}

function createDifference(
  { desk, variant, sheet }: ProposalOptions,
  { sheet: on, given, text }: OneDifference,
  cell: Cell | undefined,
  id: string,
): HTMLElement {
  const { name } = variant;
  const label = cell?.label ?? given;
  const where = on === sheet.name ? '' : ` (${on})`;
  const set = (wanted: string | undefined) =>
    desk.replace(
      `${name}: ${label} ${wanted ?? 'as it is'}`,
      withDifference(desk.job(), name, on, given, wanted),
    );
  const unit = cell?.display.unit === undefined ? '' : formatUnit(cell.display.unit);
  return h(
    'p',
    { class: 'proposal-difference' },
    h('label', { for: id }, `${label}${where}`),
    ...createOffered(desk, cell, id),
    createText(id, text, set),
    unit !== '' && h('span', { class: 'unit' }, unit),
    h(
      'button',
      {
        type: 'button',
        'aria-label': `Take back ${label}`,
        on: { click: () => set(undefined) },
      },
      'Take back',
    ),
  );
}

/** Rows of the table that a given is picked from, offered while it is typed. */
function createOffered(desk: Desk, cell: Cell | undefined, id: string): readonly HTMLElement[] {
  const rows = cell?.role === 'given' ? rowsOf(desk.book, cell) : [];
  if (rows.length === 0) return [];
  return [
    h('datalist', { id: `${id}-rows` }, ...rows.map(({ key }) => h('option', { value: key }))),
  ];
}

/** Enter or leaving commits, Escape brings back what was there. */
function createText(id: string, text: string, commit: (text: string) => void): HTMLElement {
  const input = h('input', {
    id,
    type: 'text',
    autocomplete: 'off',
    spellcheck: 'false',
    list: `${id}-rows`,
    on: {
      change: () => commit(input.value),
      keydown: (event) => {
        if ((event as KeyboardEvent).key === 'Escape') input.value = text;
      },
    },
  });
  input.value = text;
  return input;
}

/** A choice of what else could be different: all that is measured or chosen on this sheet. */
function createAdding({ desk, sheet, variant, id }: ProposalOptions): HTMLElement {
  const offered = listGivens(desk, sheet).filter(
    (cell) => differenceIn(variant, cell.sheet, cell.name) === undefined,
  );
  const select = h(
    'select',
    { id: `${id}-given`, on: { change: add } },
    h('option', { value: '' }, 'choose …'),
    ...offered.map(({ index, label }) => h('option', { value: index }, label)),
  );

  /** It begins with what the job has, so that there is something to change. */
  function add(): void {
    const cell = offered.find(({ index }) => String(index) === select.value);
    if (cell === undefined) return;
    const text = entryText(desk, cell) ?? textOf(cell);
    desk.replace(
      `${variant.name}: ${cell.label} different`,
      withDifference(desk.job(), variant.name, cell.sheet, cell.name, text),
    );
    const place = listDifferences(
      desk.job().variants.find((one) => one.name === variant.name)!.entries,
    ).findIndex(({ sheet: on, given }) => on === cell.sheet && given === cell.name);
    document.getElementById(`${id}-${place}`)?.focus();
  }

  return h('p', {}, h('label', { for: `${id}-given` }, 'What is different'), ' ', select);
}

function listGivens(desk: Desk, sheet: Sheet): readonly GivenCell[] {
  const origins = desk.book.cellsOf(sheet.name).map((cell) => originOf(desk.book, cell));
  return origins.filter(
    (cell): cell is GivenCell => cell?.role === 'given' && cell.kind !== undefined,
  );
}

/** What was typed, with the unit that a bare number was meant in where that is not the given's own. */
function entryText(desk: Desk, cell: GivenCell): string | undefined {
  const entry = desk.entryOf(cell);
  const reading = desk.readingOf(cell);
  const isExplicit = reading.state === 'value' && reading.explicit;
  return entry && formatEntry(entry, isExplicit, cell.display.unit);
}

/** The sheet's own value as it would be typed. */
function textOf({ statement: { value } }: GivenCell): string {
  switch (value.type) {
    case 'entry':
      return value.text;
    case 'pick':
      return value.row;
    case 'text':
      return value.value;
    case 'blank':
      return '';
    default:
      return value satisfies never;
  }
}
