import {
  type Dimension,
  equalDimensions,
  multiplyDimensions,
  NONE,
  raiseDimension,
} from './dimension.ts';
import type { Unit } from './unit.ts';
import { findUnit } from './unit-index.ts';
import type { UnitDeclaration } from './unit-table.ts';

/** One factor of a compound: `/s^2` is the second with exponent −2. */
export interface UnitPart {
  readonly unit: UnitDeclaration;
  /** A whole number other than 0. */
  readonly exponent: number;
}

/**
 * The unit that the parts make, in their order. A force times a length beside it (`N·m`, `ft·lbf`,
 * `N·mm`) is a torque, energy per angle: nobody writes an energy that way in this trade.
 */
export function composeUnit(parts: readonly UnitPart[]): Unit {
  const named = findUnit(spell(parts));
  if (named !== undefined) return named;
  const fused = fuseTorques(parts);
  return {
    symbol: spell(fused),
    factor: fused.reduce(scale, 1),
    dimension: fused.reduce(times, NONE),
    system: fused.map((part) => part.unit.system).find((one) => one !== 'common') ?? 'common',
  };
}

function scale(factor: number, { unit, exponent }: UnitPart): number {
  return exponent < 0 ? factor / unit.factor ** -exponent : factor * unit.factor ** exponent;
}

function times(dimension: Dimension, part: UnitPart): Dimension {
  return multiplyDimensions(dimension, raiseDimension(part.unit.dimension, part.exponent));
}

/** Canonical text of a compound: `kg·m^2/s^2`, `1/mi`. */
function spell(parts: readonly UnitPart[]): string {
  let text = '';
  for (const { unit, exponent } of parts) {
    if (exponent < 0) text += text === '' ? '1/' : '/';
    else if (text !== '') text += '·';
    const power = Math.abs(exponent);
    text += power === 1 ? unit.symbol : `${unit.symbol}^${power}`;
  }
  return text;
}

/** The same parts with each force beside a length drawn together into one unit of torque. */
export function fuseTorques(parts: readonly UnitPart[]): readonly UnitPart[] {
  const fused: UnitPart[] = [];
  for (const part of parts) {
    const before = fused.at(-1);
    const torque = before === undefined ? undefined : maybeTorque(before, part);
    if (torque === undefined) fused.push(part);
    else fused[fused.length - 1] = { unit: torque, exponent: 1 };
  }
  return fused;
}

const LENGTH: Dimension = [1, 0, 0, 0];
const FORCE: Dimension = [1, 1, -2, 0];

function maybeTorque(a: UnitPart, b: UnitPart): UnitDeclaration | undefined {
  if (a.exponent !== 1 || b.exponent !== 1) return undefined;
  const declared = findUnit(`${a.unit.symbol}·${b.unit.symbol}`);
  return declared ?? createTorque(a.unit, b.unit) ?? createTorque(b.unit, a.unit);
}

function createTorque(force: UnitDeclaration, arm: UnitDeclaration): UnitDeclaration | undefined {
  if (!equalDimensions(force.dimension, FORCE)) return undefined;
  if (!equalDimensions(arm.dimension, LENGTH)) return undefined;
  return {
    symbol: `${force.symbol}·${arm.symbol}`,
    name: `${force.name} ${arm.name}`,
    aliases: [],
    marks: [],
    factor: force.factor * arm.factor,
    dimension: [2, 1, -2, -1],
    system: force.system,
    counterpart: force.system === 'metric' ? 'lbf·ft' : 'N·m',
    source: `${force.source}; ${arm.source}`,
  };
}
