import type { GivenCell } from '../sheet/cell.ts';
import type { Entry } from '../sheet/reading.ts';
import type { Step } from '../sheet/sheet.ts';

/** A button has no room for more. */
const MOST = 40;

/** A change as undo tells it: `Gap to set, 0.150 in to 0.160 in`. */
export function nameEntryChange(
  cell: GivenCell,
  before: Entry | undefined,
  after: Entry | undefined,
): string {
  return `${cell.label}, ${nameEntry(cell, before)} to ${nameEntry(cell, after)}`;
}

export function nameTickChange(step: Step, done: boolean): string {
  return `${done ? 'tick' : 'untick'} “${shorten(step.text)}”`;
}

function nameEntry(cell: GivenCell, entry: Entry | undefined): string {
  if (entry === undefined) return nameExample(cell);
  const text = shorten(entry.text.trim());
  if (text === '') return 'blank';
  // A bare number is in the unit of its field.
  const unit = entry.unit ?? cell.display.unit?.symbol;
  return /[\d\])]$/.test(text) && unit !== undefined ? `${text} ${unit}` : text;
}

function nameExample({ statement: { value } }: GivenCell): string {
  switch (value.type) {
    case 'entry':
      return shorten(value.text);
    case 'pick':
      return shorten(value.row);
    case 'text':
      return shorten(value.value);
    case 'blank':
      return 'blank';
    default:
      return value satisfies never;
  }
}

function shorten(text: string): string {
  return text.length <= MOST ? text : `${text.slice(0, MOST - 1)}…`;
}
