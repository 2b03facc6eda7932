import { drawDatum } from '../drawing/datum.ts';
import type { GivenCell } from '../sheet/cell.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { showValue } from '../sheet/show.ts';
import { formatUnit } from '../units/format-unit.ts';
import { createCaution } from './caution.ts';
import type { Desk } from './desk.ts';
import { h } from './element.ts';
import { unitOfField } from './given-field.ts';
import { listCautions, listReadings, type ReadingGroup } from './paper-readings.ts';
import { formatNumber } from './route.ts';
import { createSignature } from './signature.ts';

const COLUMNS = ['Reading', 'Taken', 'Measured', 'Unit'] as const;
/** Width of a sketch, in px. */
const SKETCH = 150;

/** Sheets that have anything to be measured. */
export function listMeasured(desk: Desk, sheets: readonly Sheet[]): readonly Sheet[] {
  return sheets.filter((sheet) => listReadings(desk.book, sheet).length > 0);
}

/**
 * A blank sheet to take to the car: each reading with what it is, how it is taken, a sketch of what from
 * and to, its unit and a box to write in; the sheets' cautions; who measured. What is in the job already is not printed: whoever sees a figure
 * reads it off the gauge again.
 */
export function createMeasuringSheet(desk: Desk, sheets: readonly Sheet[]): HTMLElement {
  const parts = listMeasured(desk, sheets).flatMap((sheet) => createSheetPart(desk, sheet));
  return h(
    'section',
    { class: 'paper-sheet measuring' },
    h('h1', {}, 'Measuring sheet'),
    h(
      'p',
      { class: 'meaning' },
      'Write what the gauge says, with its unit where it is not the one printed. A reading taken more than once goes in with semicolons between. The sketches are not to scale: from the circle to the arrow.',
    ),
    ...parts,
    createSignature('Measured by'),
  );
}

function createSheetPart(desk: Desk, sheet: Sheet): readonly HTMLElement[] {
  const place = formatNumber(sheet.number);
  return [
    h('h2', {}, place === '' ? sheet.title : `${place} ${sheet.title}`),
    ...listCautions(sheet).map(createCaution),
    ...listReadings(desk.book, sheet).map((group) => createGroup(desk, sheet, group)),
  ];
}

function createGroup(desk: Desk, sheet: Sheet, { heading, readings }: ReadingGroup): HTMLElement {
  const name = heading ?? sheet.title;
  return h(
    'table',
    { class: 'readings' },
    h('caption', {}, name),
    h('colgroup', {}, ...COLUMNS.map((column) => h('col', { class: column.toLowerCase() }))),
    h('thead', {}, h('tr', {}, ...COLUMNS.map((column) => h('th', { scope: 'col' }, column)))),
    h('tbody', {}, ...readings.map((cell) => createReading(desk, cell))),
  );
}

function createReading(desk: Desk, cell: GivenCell): HTMLElement {
  const { datum, how } = cell.statement;
  const unit = unitOfField(desk, cell);
  const words = [how, describeRange(desk, cell)].filter(Boolean).join(' ');
  return h(
    'tr',
    {},
    h(
      'th',
      { scope: 'row', colspan: datum === undefined ? 2 : 1 },
      cell.label,
      h('span', { class: 'how' }, words),
    ),
    datum &&
      h(
        'td',
        { class: 'datum' },
        drawDatum(datum, { document, width: SKETCH, idPrefix: `datum-${cell.index}` }),
      ),
    h('td', {}, h('div', { class: isLong(cell) ? 'write-in long' : 'write-in' })),
    h('td', { class: 'unit' }, unit === undefined ? '' : formatUnit(unit)),
  );
}

/** More than a number is written into the box. */
function isLong({ kind }: GivenCell): boolean {
  return kind?.type !== 'quantity';
}

/** A reading far from the usual is worth taking again while one still lies under the car. */
function describeRange(desk: Desk, cell: GivenCell): string | undefined {
  const { range, kind, display } = cell;
  if (range === undefined || kind === undefined) return undefined;
  const unit = unitOfField(desk, cell);
  const shown = unit === undefined ? display : { unit, ...display };
  const [from, to] = [range.from, range.to].map(
    (value) => showValue(value, kind, shown, desk.system()).text,
  );
  return `Usually ${from} to ${to}.`;
}
