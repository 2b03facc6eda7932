import {
  type Code,
  finite,
  type ListRun,
  listCode,
  type NumberCode,
  type NumberRun,
  numberCode,
  otherCode,
} from './code.ts';
import { type FunctionDeclaration, never, type Work } from './functions/declaration.ts';
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
  if (codes.every((code) => code.type === 'number')) return compileEach(work, codes);
  return listCode(compileLifted(guarded(work), codes), true);
}

type Each = Extract<Work, { type: 'each' }>;
type Whole = Extract<Work, { type: 'whole' }>;
type WholeRun = (memory: Memory) => Value | undefined;

function compileEach(work: Each, codes: readonly NumberCode[]): Code {
  const run = guarded(work);
  const [a, b] = codes;
  if (codes.length === 1)
    return numberCode(a!.slot === undefined ? eachRun(run, a!.run) : eachSlot(run, a!.slot));
  if (codes.length === 2) {
    const [p, q] = [a!.slot, b!.slot];
    return numberCode(
      p === undefined || q === undefined ? eachPair(run, a!.run, b!.run) : eachSlots(run, p, q),
    );
  }
  const runs = codes.map((code) => code.run);
  return numberCode((memory) => finite(run(...runs.map((code) => finite(code(memory))))));
}

// Arguments must be finite too: the angle of an infinite tangent would hide the overflow.

function eachRun(run: Each['run'], a: NumberRun): NumberRun {
  return (memory) => finite(run(finite(a(memory))));
}

/** What stands in the memory is finite, or missing. */
function eachSlot(run: Each['run'], slot: number): NumberRun {
  return (memory) => finite(run(memory.numbers[slot]!));
}

function eachSlots(run: Each['run'], p: number, q: number): NumberRun {
  return (memory) => finite(run(memory.numbers[p]!, memory.numbers[q]!));
}

function eachPair(run: Each['run'], a: NumberRun, b: NumberRun): NumberRun {
  return (memory) => finite(run(finite(a(memory)), finite(b(memory))));
}

/** A formula may well give a number for what cannot be, a tube with more wall than tube: that is no value. */
function guarded({ run, refuse }: Each): Each['run'] {
  if (refuse === never) return run;
  if (run.length === 1) return (x) => (refuse(x!) === undefined ? run(x!) : Number.NaN);
  if (run.length === 2) return (x, y) => (refuse(x!, y!) === undefined ? run(x!, y!) : Number.NaN);
  return (...numbers) => (refuse(...numbers) === undefined ? run(...numbers) : Number.NaN);
}

/** Works as often as the lists are long; a number goes with each of their elements. */
function compileLifted(run: Each['run'], codes: readonly Code[]): ListRun {
  const runs = codes.map((code) => code.run as WholeRun);
  return (memory) => {
    const values = runs.map((code) => code(memory)) as (number | QuantityList)[];
    const length = values.every(isThere) ? commonLength(values) : undefined;
    if (length === undefined) return undefined;
    const out = new Float64Array(length);
    const numbers = new Array<number>(values.length);
    for (let i = 0; i < length; i += 1) {
      for (let k = 0; k < values.length; k += 1) {
        const value = values[k]!;
        numbers[k] = typeof value === 'number' ? value : value[i]!;
      }
      out[i] = finite(run(...numbers));
    }
    return out;
  };
}

/** The length of all lists among the values; undefined where they differ. */
function commonLength(values: readonly (number | QuantityList)[]): number | undefined {
  let length: number | undefined;
  for (const value of values) {
    if (typeof value === 'number') continue;
    if (length !== undefined && value.length !== length) return undefined;
    length = value.length;
  }
  return length;
}

function compileWhole(work: Whole, codes: readonly Code[], kind: Kind): Code {
  if (kind.type === 'quantity')
    return numberCode(compileValues(work, codes, Number.NaN) as NumberRun);
  const run = compileValues(work, codes, undefined);
  return kind.type === 'list' ? listCode(run as ListRun, true) : otherCode(run);
}

/** One and two values, the usual case, go without an array of them. `none` stands for no value. */
function compileValues(work: Whole, codes: readonly Code[], none: number | undefined): WholeRun {
  const runs = codes.map(({ run }) => run as WholeRun);
  const [a, b] = runs as [WholeRun, WholeRun];
  if (runs.length === 1) return wholeOfOne(work, a, none);
  if (runs.length === 2) return wholeOfTwo(work, a, b, none);
  return wholeOfMany(work, runs, none);
}

function wholeOfOne({ refuse, run }: Whole, a: WholeRun, none: number | undefined): WholeRun {
  return (memory) => {
    const x = a(memory)!;
    return isThere(x) && refuse(x) === undefined ? run(x) : none;
  };
}

function wholeOfTwo(
  { refuse, run }: Whole,
  a: WholeRun,
  b: WholeRun,
  none: number | undefined,
): WholeRun {
  return (memory) => {
    const x = a(memory)!;
    const y = b(memory)!;
    return isThere(x) && isThere(y) && refuse(x, y) === undefined ? run(x, y) : none;
  };
}

function wholeOfMany(
  { refuse, run }: Whole,
  runs: readonly WholeRun[],
  none: number | undefined,
): WholeRun {
  return (memory) => {
    const values = runs.map((code) => code(memory)) as Value[];
    return values.every(isThere) && refuse(...values) === undefined ? run(...values) : none;
  };
}

/** Whole values with a gap in them are no values. */
export function isThere(value: unknown): boolean {
  if (typeof value === 'number') return value - value === 0;
  return value instanceof Float64Array ? isWhole(value) : value !== undefined;
}

/** True for a list without a gap. */
export function isWhole(list: QuantityList): boolean {
  for (let i = 0; i < list.length; i += 1) if (list[i]! - list[i]! !== 0) return false;
  return true;
}
