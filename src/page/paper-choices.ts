import type { Sheet } from '../sheet/sheet.ts';
import type { Desk } from './desk.ts';
import { h } from './element.ts';
import { listMeasured } from './paper-measuring.ts';
import type { PaperFormat } from './paper-rules.ts';
import { type PaperHost, type PaperOrder, printOnPaper } from './paper-view.ts';
import { choose } from './print-choices.ts';
import type { View } from './view.ts';

const YES_OR_NO = [
  ['yes', 'printed'],
  ['no', 'left out'],
] as const;

/** What goes on paper: this sheet or the whole job, as it stands or blank to be measured. */
export function createPaperChoices(desk: Desk, sheet: Sheet, host: PaperHost): View {
  const job = jobSheets(desk.book.sheets);
  const what = choose('What', listOffers(desk, sheet, job), 'sheet', change);
  const format = choose(
    'Paper',
    [
      ['A4', 'A4'],
      ['letter', 'Letter'],
    ],
    'A4',
    change,
  );
  const narrative = choose('Narrative', YES_OR_NO, 'yes', change);
  const working = choose('Working', YES_OR_NO, 'yes', change);
  const button = h('button', { type: 'button', on: { click: () => void print() } }, 'Print');

  function change(): void {
    const isBlank = what.field.value.startsWith('measure');
    narrative.element.hidden = isBlank;
    working.element.hidden = isBlank;
  }

  function readOrder(): PaperOrder {
    const [kind, extent] = what.field.value.split('-');
    return {
      sheets: extent === 'job' || kind === 'job' ? job : [sheet],
      what: kind === 'measure' ? 'measuring' : 'sheets',
      format: format.field.value as PaperFormat,
      narrative: narrative.field.value === 'yes',
      working: working.field.value === 'yes',
    };
  }

  /** One print at a time: a second press would lay the same sheets again. */
  async function print(): Promise<void> {
    button.disabled = true;
    await printOnPaper(desk, readOrder(), host).finally(() => {
      button.disabled = false;
    });
  }

  const element = h(
    'div',
    {},
    h(
      'p',
      { class: 'meaning' },
      'Cautions are always printed. A measuring sheet is blank: each reading with how it is taken and a box to write in, to take to the car.',
    ),
    h(
      'div',
      { class: 'print-choices', role: 'group', 'aria-label': 'What goes on paper' },
      what.element,
      format.element,
      narrative.element,
      working.element,
      button,
    ),
  );
  return { element, cells: [], refresh: () => {} };
}

/** The guide, which has the number 0, belongs to no job. */
export function jobSheets(sheets: readonly Sheet[]): readonly Sheet[] {
  return sheets.filter(({ number }) => number !== 0);
}

/** A measuring sheet is offered where there is something to measure. */
function listOffers(
  desk: Desk,
  sheet: Sheet,
  job: readonly Sheet[],
): readonly (readonly [string, string])[] {
  const measured = listMeasured(desk, [sheet]).length > 0;
  return [
    ['sheet', 'this sheet'],
    ['job', 'the whole job'],
    ...(measured ? [['measure-sheet', 'a measuring sheet for this sheet'] as const] : []),
    ...(listMeasured(desk, job).length > 0
      ? [['measure-job', 'a measuring sheet for the whole job'] as const]
      : []),
  ];
}
