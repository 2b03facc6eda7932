import type { Kind, Row, Value } from '../language/kind.ts';
import {
  type MathElement,
  type MathLeaves,
  mathElement,
  mathQuantity,
  mathWords,
  NAMED_LEAVES,
} from '../language/print-math.ts';
import type { FieldNode, NameNode } from '../language/tree.ts';
import { displayAsRead } from '../sheet/as-read.ts';
import type { Cell } from '../sheet/cell.ts';
import type { Display } from '../sheet/sheet.ts';
import { showValue } from '../sheet/show.ts';
import { joinUnit } from '../units/format-quantity.ts';
import { formatUnit } from '../units/format-unit.ts';
import type { System } from '../units/unit.ts';
import { type Desk, findCell } from './desk.ts';
import { unitOfField } from './given-field.ts';

/** A longer list is written by its name: its numbers stand in the answer. */
const MOST_ELEMENTS = 8;

/** Writes a formula of a sheet with the numbers in it. A cell without a value keeps its name. */
export function createNumberLeaves(desk: Desk, sheet: string): MathLeaves {
  return {
    quantity: NAMED_LEAVES.quantity,
    name(node) {
      const cell = findCell(desk, sheet, node.type === 'name' ? node.name : node.owner.name);
      const outcome = cell && desk.outcomeOf(cell.index);
      if (cell?.kind === undefined || outcome?.state !== 'value') return NAMED_LEAVES.name(node);
      return writeLeaf(node, cell, outcome.value, desk) ?? NAMED_LEAVES.name(node);
    },
  };
}

function writeLeaf(
  node: NameNode | FieldNode,
  cell: Cell,
  value: Value,
  desk: Desk,
): MathElement | undefined {
  const system = desk.system();
  if (node.type === 'name') return writeValue(value, cell.kind!, ...displayOf(desk, cell, value));
  if (cell.kind?.type !== 'row') return undefined;
  const field = (value as Row).cells.get(node.field);
  const kind = cell.kind.columns.get(node.field);
  return field === undefined || kind === undefined
    ? undefined
    : writeValue(field, kind, {}, system);
}

/** What was entered is written in the unit of its field, whatever the system of the page. */
function displayOf(desk: Desk, cell: Cell, value: Value): readonly [Display, System | undefined] {
  const display = displayAsRead(desk.book, cell, value);
  if (cell.role !== 'given') return [display, desk.system()];
  const unit = unitOfField(desk, cell);
  if (unit === undefined || unit === cell.display.unit) return [display, undefined];
  return [display, desk.system()];
}

function writeValue(
  value: Value,
  kind: Kind,
  display: Display,
  system: System | undefined,
): MathElement | undefined {
  switch (kind.type) {
    case 'quantity': {
      const { number, unit } = showValue(value, kind, display, system);
      return mathQuantity(number, unit === undefined ? '' : formatUnit(unit));
    }
    case 'list':
      return writeList(value as Float64Array, kind, display, system);
    case 'text':
      return mathWords(`“${value as string}”`);
    default:
      return undefined;
  }
}

/** `[1, 2, 3] in`: the unit once, behind the bracket. */
function writeList(
  values: Float64Array,
  kind: Extract<Kind, { type: 'list' }>,
  display: Display,
  system: System | undefined,
): MathElement | undefined {
  if (values.length === 0 || values.length > MOST_ELEMENTS) return undefined;
  const single: Kind = { type: 'quantity', dimension: kind.dimension };
  const shown = [...values].map((value) => showValue(value, single, display, system));
  const items = shown.flatMap(({ number }, i) => [
    ...(i === 0 ? [] : [mathElement('mo', ',')]),
    mathElement('mn', number),
  ]);
  const unit = shown[0]!.unit;
  return mathElement(
    'mrow',
    mathElement('mo', '['),
    ...items,
    mathElement('mo', ']'),
    ...(unit === undefined ? [] : [mathElement('mtext', joinUnit('', unit))]),
  );
}
