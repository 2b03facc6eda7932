import type { GivenCell } from '../sheet/cell.ts';
import type { Entry } from '../sheet/reading.ts';
import { formatUnit } from '../units/format-unit.ts';
import type { Unit } from '../units/unit.ts';
import type { Desk } from './desk.ts';
import { fieldUnitOf, formatEntry, withoutUnit } from './field-unit.ts';

/** What the field of a given shows. */
export interface GivenField {
  readonly text: string;
  readonly unit: Unit | undefined;
  /** The unit as it stands behind the field; '' where the entry says its own. */
  readonly suffix: string;
  readonly error: string | undefined;
}

/** The unit in which a bare number is taken on this page. */
export function unitOfField(desk: Desk, cell: GivenCell): Unit | undefined {
  return fieldUnitOf(cell.display.unit, cell.statement.display.unit, desk.system());
}

/** The entry as typed, or the sheet's example, as it reads in the field's unit. */
export function readGivenField(desk: Desk, cell: GivenCell): GivenField {
  const unit = unitOfField(desk, cell);
  const reading = desk.readingOf(cell);
  const entry = desk.entryOf(cell);
  const explicit = entry !== undefined && reading.state === 'value' && reading.explicit;
  return {
    text: entry === undefined ? exampleOf(cell, unit) : formatTyped(entry, cell, explicit, unit),
    unit,
    suffix: unit === undefined || explicit ? '' : formatUnit(unit),
    error: reading.state === 'failed' ? reading.problem.message : undefined,
  };
}

function formatTyped(
  entry: Entry,
  cell: GivenCell,
  explicit: boolean,
  unit: Unit | undefined,
): string {
  return formatEntry({ unit: cell.display.unit?.symbol, ...entry }, explicit, unit);
}

/** What the sheet holds for the given, as a person would type it. */
export function exampleOf(cell: GivenCell, unit: Unit | undefined): string {
  const { value } = cell.statement;
  switch (value.type) {
    case 'entry':
      return withoutUnit(value.text, unit);
    case 'text':
      return value.value;
    case 'blank':
    case 'pick':
      return '';
    default:
      return value satisfies never;
  }
}
