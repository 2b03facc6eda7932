import { type Code, type ListRun, listCode, type NumberCode, type NumberRun } from './code.ts';
import type { QuantityList } from './kind.ts';
import { divide, raise } from './safe-operators.ts';
import type { ArithmeticOperator } from './tree.ts';

/**
 * One operator along lists, once for each way in which its sides can stand; each mutates `out`.
 * Written out one by one: to ask within the loop which side is a number, or to call a function for
 * the operator, takes longer than the arithmetic.
 */
interface Loops {
  readonly lists: (a: QuantityList, b: QuantityList, out: QuantityList) => void;
  /** The number on the left, and told second all the same. */
  readonly left: (b: QuantityList, a: number, out: QuantityList) => void;
  readonly right: (a: QuantityList, b: number, out: QuantityList) => void;
}

const LOOPS: Readonly<Record<ArithmeticOperator, Loops>> = {
  '+': {
    lists(a, b, out) {
      for (let i = 0, n = out.length; i < n; i += 1) out[i] = a[i]! + b[i]!;
    },
    left(b, a, out) {
      for (let i = 0, n = out.length; i < n; i += 1) out[i] = a + b[i]!;
    },
    right(a, b, out) {
      for (let i = 0, n = out.length; i < n; i += 1) out[i] = a[i]! + b;
    },
  },
  '-': {
    lists(a, b, out) {
      for (let i = 0, n = out.length; i < n; i += 1) out[i] = a[i]! - b[i]!;
    },
    left(b, a, out) {
      for (let i = 0, n = out.length; i < n; i += 1) out[i] = a - b[i]!;
    },
    right(a, b, out) {
      for (let i = 0, n = out.length; i < n; i += 1) out[i] = a[i]! - b;
    },
  },
  '*': {
    lists(a, b, out) {
      for (let i = 0, n = out.length; i < n; i += 1) out[i] = a[i]! * b[i]!;
    },
    left(b, a, out) {
      for (let i = 0, n = out.length; i < n; i += 1) out[i] = a * b[i]!;
    },
    right(a, b, out) {
      for (let i = 0, n = out.length; i < n; i += 1) out[i] = a[i]! * b;
    },
  },
  '/': {
    lists(a, b, out) {
      for (let i = 0, n = out.length; i < n; i += 1) out[i] = divide(a[i]!, b[i]!);
    },
    left(b, a, out) {
      for (let i = 0, n = out.length; i < n; i += 1) out[i] = divide(a, b[i]!);
    },
    right(a, b, out) {
      for (let i = 0, n = out.length; i < n; i += 1) out[i] = divide(a[i]!, b);
    },
  },
  '^': {
    lists(a, b, out) {
      for (let i = 0, n = out.length; i < n; i += 1) out[i] = raise(a[i]!, b[i]!);
    },
    left(b, a, out) {
      for (let i = 0, n = out.length; i < n; i += 1) out[i] = raise(a, b[i]!);
    },
    right(a, b, out) {
      for (let i = 0, n = out.length; i < n; i += 1) out[i] = raise(a[i]!, b);
    },
  },
};

/**
 * Code for an operator of which one side at least is a list. Lists of unequal length have no value;
 * why is told when it is asked for.
 */
export function compileElements(operator: ArithmeticOperator, left: Code, right: Code): Code {
  const loops = LOOPS[operator];
  if (left.type === 'number') return besideNumber(right, left, loops.left);
  if (right.type === 'number') return besideNumber(left, right, loops.right);
  return besideList(left, right, loops.lists);
}

function besideNumber(list: Code, { run, slot }: NumberCode, loop: Loops['right']): Code {
  const from = list.run as ListRun;
  const into = isFresh(list);
  return listCode(
    slot === undefined ? besideRun(from, run, loop, into) : besideSlot(from, slot, loop, into),
    true,
  );
}

function besideRun(list: ListRun, number: NumberRun, loop: Loops['right'], into: boolean): ListRun {
  return (memory) => workBeside(list(memory), number(memory), loop, into);
}

function besideSlot(list: ListRun, slot: number, loop: Loops['right'], into: boolean): ListRun {
  return (memory) => workBeside(list(memory), memory.numbers[slot]!, loop, into);
}

/** Mutates the list where it may be written into. */
function workBeside(
  a: QuantityList | undefined,
  b: number,
  loop: Loops['right'],
  into: boolean,
): QuantityList | undefined {
  // An empty list would hide that the number is missing.
  if (a === undefined || b - b !== 0) return undefined;
  const out = into ? a : new Float64Array(a.length);
  loop(a, b, out);
  return out;
}

function besideList(left: Code, right: Code, loop: Loops['lists']): Code {
  const [a, b] = [left.run as ListRun, right.run as ListRun];
  const [intoLeft, intoRight] = [isFresh(left), isFresh(right)];
  return listCode((memory) => {
    const x = a(memory);
    const y = b(memory);
    if (x === undefined || y === undefined || x.length !== y.length) return undefined;
    const out = intoLeft ? x : intoRight ? y : new Float64Array(x.length);
    loop(x, y, out);
    return out;
  }, true);
}

/** A list that nobody else holds is written over: most of the time of short lists is their making. */
function isFresh(code: Code): boolean {
  return code.type === 'list' && code.fresh;
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
