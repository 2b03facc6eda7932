import type { GivenCell } from '../sheet/cell.ts';
import type { Desk } from './desk.ts';
import { describeReading } from './echo.ts';
import { fill, h } from './element.ts';
import { createEntryField, type EntryField } from './entry-field.ts';
import { createGivenChoice } from './given-choice.ts';
import { readGivenField, unitOfField } from './given-field.ts';
import { createGivenSlider } from './given-slider.ts';
import type { View } from './view.ts';

/** From so many characters on, an entry has the whole width of the block. */
const LONG = 19;

/** One given: label and how to measure it, the field, what was understood, and a slider if it has a range. */
export function createGivenRow(desk: Desk, cell: GivenCell): View {
  const { statement, name } = cell;
  const ids = { how: `${name}-how`, echo: `${name}-echo` };
  const describedBy = [...(statement.how === undefined ? [] : [ids.how]), ids.echo];
  const choice = createGivenChoice(desk, cell, describedBy);
  const field = createField(desk, cell, choice === undefined ? name : `${name}-own`, describedBy);
  const slider = createGivenSlider(desk, cell);
  const echo = h('p', { class: 'echo', id: ids.echo });
  const how = statement.how && h('span', { class: 'how', id: ids.how }, statement.how);
  const row = h(
    'div',
    { class: 'given-row' },
    h('div', { class: 'given-name' }, h('label', { for: name }, cell.label), how),
    choice?.element,
    field.element,
    echo,
    field.error,
    slider?.element,
  );

  function refresh(): void {
    const own = choice === undefined || choice.refresh();
    const shown = readGivenField(desk, cell);
    field.show({ text: shown.text, unit: shown.suffix, error: shown.error });
    field.element.hidden = !own;
    row.classList.toggle('long', shown.text.length > LONG || (choice !== undefined && own));
    const reading = desk.readingOf(cell);
    const lines = own ? describeReading(reading, shown) : choice.describe();
    const outside =
      isOutside(desk, cell) && h('span', { class: 'outside' }, 'outside the usual range');
    fill(echo, ...lines.map((line) => h('span', {}, line)), outside);
    slider?.refresh();
  }

  if (choice !== undefined) field.input.setAttribute('aria-label', `${cell.label}, your own`);
  refresh();
  return { element: row, cells: [cell.index], refresh };
}

function createField(
  desk: Desk,
  cell: GivenCell,
  id: string,
  describedBy: readonly string[],
): EntryField {
  return createEntryField({
    id,
    describedBy,
    words: cell.kind?.type === 'text',
    commit(text) {
      const unit = unitOfField(desk, cell);
      desk.enter(cell, unit === undefined ? { text } : { text, unit: unit.symbol });
    },
  });
}

/** A value beyond the range is allowed, and said. */
function isOutside(desk: Desk, cell: GivenCell): boolean {
  const reading = desk.readingOf(cell);
  if (cell.range === undefined || reading.state !== 'value') return false;
  const value = reading.value as number;
  const slack = 1e-9 * Math.abs(cell.range.to);
  return value < cell.range.from - slack || value > cell.range.to + slack;
}
