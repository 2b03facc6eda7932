import {
  type Code,
  finite,
  type ListRun,
  listCode,
  type NumberRun,
  numberCode,
  otherCode,
} from './code.ts';
import type { FunctionDeclaration, Work } from './functions/declaration.ts';
import type { Kind, QuantityList, Value } from './kind.ts';
import type { Memory } from './memory.ts';

/** Code for a call; `codes` stand in the order of the declaration's parameters. */
export function compileCall(
  declaration: FunctionDeclaration,
  codes: readonly Code[],
  kind: Kind,
): Code {
  const { work } = declaration;
  if (work.type === 'whole') return compileWhole(work, codes, kind);
  if (codes.every((code) => code.type === 'number'))
    return compileEach(
      work,
      codes.map((code) => code.run as NumberRun),
    );
  return listCode(compileLifted(work, codes));
}

type Each = Extract<Work, { type: 'each' }>;
type Whole = Extract<Work, { type: 'whole' }>;

function compileEach({ run }: Each, runs: readonly NumberRun[]): Code {
  // Arguments too: the angle of an infinite tangent would hide the overflow.
  const [a, b] = runs;
  if (runs.length === 1) return numberCode((memory) => finite(run(finite(a!(memory)))));
  if (runs.length === 2) {
    return numberCode((memory) => finite(run(finite(a!(memory)), finite(b!(memory)))));
  }
  return numberCode((memory) => finite(run(...runs.map((code) => finite(code(memory))))));
}

function compileLifted({ run }: Each, codes: readonly Code[]): ListRun {
  return (memory) => {
    const values = codes.map((code) => code.run(memory) as number | QuantityList | undefined);
    const length = commonLength(values);
    if (length === undefined) return undefined;
    return Float64Array.from({ length }, (_, i) =>
      finite(run(...values.map((value) => finite(typeof value === 'number' ? value : value![i]!)))),
    );
  };
}

function commonLength(values: readonly (number | QuantityList | undefined)[]): number | undefined {
  const lengths = values.flatMap((value) => (typeof value === 'number' ? [] : [value?.length]));
  return lengths.every((length) => length === lengths[0]) ? lengths[0] : undefined;
}

function compileWhole(work: Whole, codes: readonly Code[], kind: Kind): Code {
  const runs = codes.map((code) => code.run);
  const run = (memory: Memory): Value | undefined => {
    const values: unknown[] = [];
    for (const code of runs) {
      const value = code(memory);
      if (!isThere(value)) return undefined;
      values.push(value);
    }
    return work.refuse(...(values as Value[])) === undefined
      ? work.run(...(values as Value[]))
      : undefined;
  };
  if (kind.type === 'quantity')
    return numberCode((memory) => (run(memory) as number | undefined) ?? Number.NaN);
  if (kind.type === 'list') return listCode((memory) => run(memory) as QuantityList | undefined);
  return otherCode(run);
}

/** Whole values with a gap in them are no values. */
export function isThere(value: unknown): boolean {
  if (typeof value === 'number') return value - value === 0;
  if (!(value instanceof Float64Array)) return value !== undefined;
  for (const x of value) if (x - x !== 0) return false;
  return true;
}
