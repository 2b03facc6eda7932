import { formatEcho } from '../language/entry-echo.ts';
import type { Reading } from '../sheet/reading.ts';
import { unitIn } from '../units/counterpart.ts';
import { stripZeros } from '../units/format-number.ts';
import { formatAmount, joinUnit } from '../units/format-quantity.ts';
import type { System, Unit } from '../units/unit.ts';

/** The field that the entry stands in. */
export interface EchoContext {
  /** As it stands in the field. */
  readonly text: string;
  readonly unit: Unit | undefined;
}

/**
 * What was understood of an entry, a line each: a fraction as a decimal, another unit in the
 * field's own, the mean of several readings, and the same in the other system. What would only
 * repeat the field is left out.
 */
export function describeReading(reading: Reading, { text, unit }: EchoContext): readonly string[] {
  if (reading.state === 'blank') return ['left blank'];
  if (reading.state === 'failed') return [];
  const { value } = reading;
  const plain = PLAIN.test(text);
  if (value instanceof Float64Array && plain) return [describeLength(value.length)];
  if (typeof value !== 'number' && !(value instanceof Float64Array)) return [];
  const understood = plain ? [] : [formatEcho({ ...reading, value }, unit)];
  const foreign = reading.unit !== undefined && reading.unit.symbol !== unit?.symbol;
  if (typeof value !== 'number' || foreign) return understood;
  return [...understood, ...otherSystems(unit).map((other) => formatRough(value, other))];
}

/** A decimal, with or without a tolerance, or a list of decimals. */
const PLAIN = /^\s*(?:[\d.]+(?:\s*±\s*[\d.]+)?|\[[\d.,\s]*\])\s*$/;

/** The unit's counterpart, unless both systems share the unit. */
function otherSystems(unit: Unit | undefined): readonly Unit[] {
  if (unit === undefined) return [];
  const systems: readonly System[] = ['inch-pound', 'metric'];
  return systems.map((system) => unitIn(unit, system)).filter((other) => other !== unit);
}

/** Five figures: finer than any reading in a workshop. */
function formatRough(value: number, unit: Unit): string {
  return joinUnit(stripZeros(formatAmount(value, unit, { figures: 5 })), unit);
}

function describeLength(count: number): string {
  if (count === 0) return 'an empty list';
  return count === 1 ? 'a list of one' : `a list of ${count}`;
}
