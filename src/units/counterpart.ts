import { composeUnit } from './compound.ts';
import { equalDimensions } from './dimension.ts';
import { parseUnitParts } from './parse-unit.ts';
import type { System, Unit } from './unit.ts';
import { findUnit } from './unit-index.ts';
import type { UnitDeclaration } from './unit-table.ts';

/**
 * The unit that shows the same dimension in the other system: `in` → `mm`, part by part in a
 * compound: `in/rev` → `mm/rev`. A unit of that system already, or common to both, stays.
 */
export function unitIn(unit: Unit, system: System): Unit {
  const parts = parseUnitParts(unit.symbol);
  const moved = parts.map((part) => ({ ...part, unit: partIn(part.unit, system) }));
  if (moved.every((part, i) => part.unit === parts[i]!.unit)) return unit;
  const counterpart = composeUnit(moved);
  // kg·m, an unbalance, would come out as lb·ft, which is read as a torque.
  return equalDimensions(counterpart.dimension, unit.dimension) ? counterpart : unit;
}

function partIn(unit: UnitDeclaration, system: System): UnitDeclaration {
  if (unit.system === system || unit.counterpart === undefined) return unit;
  return findUnit(unit.counterpart)!;
}
