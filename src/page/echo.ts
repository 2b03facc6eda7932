import type { Reading } from '../sheet/reading.ts';
import { unitIn } from '../units/counterpart.ts';
import { formatQuantity } from '../units/format-quantity.ts';
import type { System, Unit } from '../units/unit.ts';

/** What an entry is compared with to tell what is worth saying. */
export interface EchoContext {
  /** As it stands in the field. */
  readonly text: string;
  readonly unit: Unit | undefined;
}

/**
 * What was understood of an entry, a line each: a fraction as a decimal, another unit in the
 * field's own, the mean of several readings, and the same in the other system.
 */
export function describeReading(reading: Reading, { text, unit }: EchoContext): readonly string[] {
  if (reading.state === 'blank') return ['left blank'];
  if (reading.state === 'failed') return [];
  const { value } = reading;
  if (value instanceof Float64Array) return [describeLength(value.length)];
  if (typeof value !== 'number') return [];
  return describeNumber(reading, value, { text, unit });
}

function describeNumber(
  reading: Extract<Reading, { state: 'value' }>,
  value: number,
  { text, unit }: EchoContext,
): readonly string[] {
  const several = reading.readings !== undefined && reading.readings.length > 1;
  const plain = /^\s*[\d.]+(\s*±.*)?\s*$/.test(text);
  const lines = [
    several ? `mean of ${reading.readings.length}` : undefined,
    plain && !several ? undefined : `= ${formatExact(value, unit)}`,
    ...otherSystems(unit).map((other) => formatExact(value, other)),
  ];
  return lines.filter((line) => line !== undefined);
}

/** The unit's counterpart, unless both systems share the unit. */
function otherSystems(unit: Unit | undefined): readonly Unit[] {
  if (unit === undefined) return [];
  const systems: readonly System[] = ['inch-pound', 'metric'];
  return systems.map((system) => unitIn(unit, system)).filter((other) => other !== unit);
}

/** Five figures and no zeros that say nothing: finer than any reading in a workshop. */
function formatExact(value: number, unit: Unit | undefined): string {
  const amount = unit === undefined ? value : value / unit.factor;
  const places = Math.max(0, 4 - Math.floor(Math.log10(Math.abs(amount) || 1)));
  const shown = Number(amount.toFixed(Math.min(places, 20)));
  const decimals = String(shown).split('.')[1]?.length ?? 0;
  return formatQuantity(value, unit, { resolution: 10 ** -decimals });
}

function describeLength(count: number): string {
  if (count === 0) return 'an empty list';
  return count === 1 ? 'a list of one' : `a list of ${count}`;
}
