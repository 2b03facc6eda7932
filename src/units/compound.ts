import { type Dimension, multiplyDimensions, NONE, raiseDimension } from './dimension.ts';
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
 * The unit that the parts make, in their order. A product that is a torque (`N·m`, `ft·lbf`)
 * becomes the declared torque unit, since torque is energy per angle and not energy.
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

function fuseTorques(parts: readonly UnitPart[]): readonly UnitPart[] {
  const fused: UnitPart[] = [];
  for (const part of parts) {
    const before = fused.at(-1);
    const torque = before === undefined ? undefined : fuse(before, part);
    if (torque === undefined) fused.push(part);
    else fused[fused.length - 1] = { unit: torque, exponent: 1 };
  }
  return fused;
}

function fuse(a: UnitPart, b: UnitPart): UnitDeclaration | undefined {
  if (a.exponent !== 1 || b.exponent !== 1) return undefined;
  return findUnit(`${a.unit.symbol}·${b.unit.symbol}`);
}
