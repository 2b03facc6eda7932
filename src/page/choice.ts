import { fill, h, setAttribute } from './element.ts';

export interface ChoiceOptions {
  readonly id: string;
  readonly describedBy: readonly string[];
  /** What may be picked, as shown and as stored. */
  readonly rows: readonly string[];
  /** Where a value of one's own may be typed in place of a row: the words of that choice. */
  readonly own?: string;
  pick(row: string): void;
  /** The person wants to type a value of their own. */
  pickOwn(): void;
}

export interface Choice {
  readonly element: HTMLElement;
  readonly select: HTMLSelectElement;
  /** Mutates the choice: the row that holds, or undefined for a value of one's own. */
  show(row: string | undefined): void;
}

/** A pick from the rows of a table, with the way out of typing one's own. */
export function createChoice(options: ChoiceOptions): Choice {
  const select = h(
    'select',
    {
      id: options.id,
      'aria-describedby': options.describedBy.join(' ') || undefined,
      on: { change },
    },
    ...options.rows.map((row, i) => h('option', { value: i }, row)),
    options.own !== undefined && h('option', { value: OWN }, options.own),
  );
  const onPaper = h('span', { class: 'print-only', 'aria-hidden': 'true' });

  function change(): void {
    if (select.value === OWN) options.pickOwn();
    else options.pick(options.rows[Number(select.value)]!);
  }

  return {
    element: h('div', { class: 'entry' }, select, onPaper),
    select,
    show(row) {
      const index = row === undefined ? -1 : options.rows.indexOf(row);
      select.value = index < 0 ? OWN : String(index);
      fill(onPaper, row ?? options.own ?? '');
      setAttribute(select, 'data-own', index < 0 ? '' : undefined);
    },
  };
}

/** No index of a row. */
const OWN = 'own';
