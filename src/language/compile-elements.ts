import { type Code, type ListRun, listCode, type NumberRun } from './code.ts';
import type { QuantityList } from './kind.ts';
import { divide, raise } from './safe-operators.ts';
import type { ArithmeticOperator } from './tree.ts';

/**
 * One operator along two lists; mutates `out`. A number takes part as a list of one that is walked
 * in steps of 0, so that each operator needs only this one loop.
 */
type Loop = (a: QuantityList, p: Step, b: QuantityList, q: Step, out: QuantityList) => void;
type Step = 0 | 1;

const LOOPS: Readonly<Record<ArithmeticOperator, Loop>> = {
  '+': (a, p, b, q, out) => {
    for (let i = 0, n = out.length; i < n; i += 1) out[i] = a[i * p]! + b[i * q]!;
  },
  '-': (a, p, b, q, out) => {
    for (let i = 0, n = out.length; i < n; i += 1) out[i] = a[i * p]! - b[i * q]!;
  },
  '*': (a, p, b, q, out) => {
    for (let i = 0, n = out.length; i < n; i += 1) out[i] = a[i * p]! * b[i * q]!;
  },
  '/': (a, p, b, q, out) => {
    for (let i = 0, n = out.length; i < n; i += 1) out[i] = divide(a[i * p]!, b[i * q]!);
  },
  '^': (a, p, b, q, out) => {
    for (let i = 0, n = out.length; i < n; i += 1) out[i] = raise(a[i * p]!, b[i * q]!);
  },
};

/**
 * Code for an operator of which one side at least is a list. Lists of unequal length have no value;
 * why is told when it is asked for.
 */
export function compileElements(operator: ArithmeticOperator, left: Code, right: Code): Code {
  const loop = LOOPS[operator];
  const [p, q] = [stepOf(left), stepOf(right)];
  const [a, b] = [readList(left), readList(right)];
  const [intoLeft, intoRight] = [isFresh(left), isFresh(right)];
  return listCode((memory) => {
    const x = a(memory);
    const y = b(memory);
    if (x === undefined || y === undefined || (p === q && x.length !== y.length)) return undefined;
    const out = intoLeft ? x : intoRight ? y : new Float64Array(p === 1 ? x.length : y.length);
    loop(x, p, y, q, out);
    return out;
  }, true);
}

/** A list that nobody else holds is written over: most of the time of short lists is their making. */
function isFresh(code: Code): boolean {
  return code.type === 'list' && code.fresh;
}

function stepOf({ type }: Code): Step {
  return type === 'number' ? 0 : 1;
}

function readList(code: Code): ListRun {
  if (code.type !== 'number') return code.run as ListRun;
  const run: NumberRun = code.run;
  const held = new Float64Array(1);
  return (memory) => {
    const number = run(memory);
    // An empty list would hide that the number is missing.
    if (number - number !== 0) return undefined;
    held[0] = number;
    return held;
  };
}

/** Code for the sign in front of a list. */
export function negateElements(run: ListRun): Code {
  return listCode((memory) => {
    const list = run(memory);
    if (list === undefined) return undefined;
    const out = new Float64Array(list.length);
    for (let i = 0; i < out.length; i += 1) out[i] = -list[i]!;
    return out;
  }, true);
}
