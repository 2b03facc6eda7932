import type { Kind, Row, Value } from '../language/kind.ts';
import { convertResolution } from '../units/convert-resolution.ts';
import { unitIn } from '../units/counterpart.ts';
import { formatAmount, joinUnit } from '../units/format-quantity.ts';
import type { System, Unit } from '../units/unit.ts';
import { inferDisplayUnit } from './display-unit.ts';
import type { Display } from './sheet.ts';

/** A value as people read it. */
export interface Shown {
  /** With its unit: `0.165 in`, `[3.15, 1.95]`, `Wide five-speed`. */
  readonly text: string;
  /** Without: `0.165`. For lists all elements. */
  readonly number: string;
  /** One text an element for lists, else one. */
  readonly items: readonly string[];
  readonly unit: Unit | undefined;
}

/** Unit and digits that a value is shown with in one system of units. */
export function displayIn(display: Display, system: System | undefined): Display {
  const { unit, resolution } = display;
  if (unit === undefined || system === undefined) return display;
  const shown = unitIn(unit, system);
  if (shown === unit) return display;
  return {
    unit: shown,
    ...(resolution === undefined ? {} : { resolution: convertResolution(resolution, unit, shown) }),
  };
}

/**
 * Shows a value in its unit.
 *
 * @param value SI
 * @param system the units of the page; undefined for the sheet's own
 */
export function showValue(value: Value, kind: Kind, display: Display, system?: System): Shown {
  const shown = displayIn(withUnit(kind, display), system);
  if (typeof value === 'number') return showItems([format(value, shown)], shown.unit, false);
  if (value instanceof Float64Array) {
    return showItems(
      Array.from(value, (x) => format(x, shown)),
      shown.unit,
      true,
    );
  }
  if (typeof value === 'string') return showItems([value], undefined, false);
  if (typeof value === 'boolean') return showItems([value ? 'yes' : 'no'], undefined, false);
  if (!Array.isArray(value)) return showItems([(value as Row).key], undefined, false);
  const texts = value.map((item) => (typeof item === 'string' ? item : (item as Row).key));
  return showItems(texts, undefined, true);
}

function withUnit(kind: Kind, display: Display): Display {
  if (display.unit !== undefined || !('dimension' in kind)) return display;
  const unit = inferDisplayUnit(kind.dimension, []);
  return unit === undefined ? display : { ...display, unit };
}

function format(value: number, { unit, resolution, fraction }: Display): string {
  return formatAmount(value, unit, {
    ...(resolution === undefined ? {} : { resolution }),
    ...(fraction === undefined ? {} : { fraction }),
  });
}

function showItems(items: readonly string[], unit: Unit | undefined, isList: boolean): Shown {
  const number = isList ? `[${items.join(', ')}]` : items[0]!;
  return { text: joinUnit(number, unit), number, items, unit };
}
