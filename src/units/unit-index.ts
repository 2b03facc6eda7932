import { UNITS, type UnitDeclaration } from './unit-table.ts';

/** `entry`: what a person types into a field, where `"` and `'` mark inches and feet; `sheet`: the language. */
export type ReadingMode = 'sheet' | 'entry';

const WORDS = new Map<string, UnitDeclaration>();
const MARKS = new Map<string, UnitDeclaration>();

for (const unit of UNITS) {
  for (const spelling of [unit.symbol, ...unit.aliases]) WORDS.set(spelling, unit);
  for (const mark of unit.marks) MARKS.set(mark, unit);
}
// `PSI` and `MM` are plain; `M` or `G` alone could be a prefix, so one letter keeps its case.
for (const [spelling, unit] of [...WORDS]) {
  const capitals = spelling.toUpperCase();
  if (/^[a-z]{2,}$/.test(spelling) && !WORDS.has(capitals)) WORDS.set(capitals, unit);
}

/** The declared unit of that spelling: symbol, alias, or a compound that has a name of its own (`rev/min`). */
export function findUnit(spelling: string): UnitDeclaration | undefined {
  return WORDS.get(spelling);
}

/** The declared unit of an inch or foot mark. */
export function findMark(mark: string): UnitDeclaration | undefined {
  return MARKS.get(mark);
}

/** Every spelling made of letters only, for "did you mean". */
export const SPELLINGS: readonly string[] = UNITS.flatMap((unit) => [
  unit.symbol,
  ...unit.aliases,
]).filter((spelling) => !/[\^]/.test(spelling));
