import { type Dimension, equalDimensions, isNone } from '../units/dimension.ts';
import { parseUnit } from '../units/parse-unit.ts';
import type { Unit } from '../units/unit.ts';

/** Units for results whose sheet names none, the usual one of each dimension first. */
const USUAL = [
  'mm',
  'kg',
  's',
  'deg',
  'km/h',
  'rpm',
  'mm^2',
  'cc',
  'm/s^2',
  'rad/s^2',
  'N',
  'N·m',
  'kW',
  'kPa',
  'kg/m^3',
  'mm/rev',
  'rev/mm',
  'N/mm',
  '1/s',
  '1/m',
  'kg·m^2',
].flatMap((symbol) => parseUnit(symbol) ?? []);

const BASE = ['m', 'kg', 's', 'rad'] as const;

/**
 * A unit to show a dimension in: one that the formula itself was written or read in, else the usual
 * one, else one made of base units. Undefined for plain numbers.
 */
export function inferDisplayUnit(
  dimension: Dimension,
  candidates: readonly Unit[],
): Unit | undefined {
  if (isNone(dimension)) return undefined;
  const fits = (unit: Unit) => equalDimensions(unit.dimension, dimension);
  return candidates.find(fits) ?? USUAL.find(fits) ?? composeBase(dimension);
}

function composeBase(dimension: Dimension): Unit {
  const powers = BASE.flatMap((symbol, i) =>
    dimension[i] === 0 ? [] : [`${symbol}^${dimension[i]}`],
  );
  return (
    parseUnit(powers.join('·')) ?? {
      symbol: powers.join('·'),
      factor: 1,
      dimension,
      system: 'common',
    }
  );
}
