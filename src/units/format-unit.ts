import type { Unit } from './unit.ts';

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** A unit as the page shows it: `kg/m³`, and `°` where it stands alone. */
export function formatUnit(unit: Pick<Unit, 'symbol'>): string {
  if (unit.symbol === 'deg') return '°';
  return unit.symbol.replace(/\^(\d+)/g, (_, power: string) =>
    Array.from(power, (digit) => RAISED[Number(digit)]).join(''),
  );
}
