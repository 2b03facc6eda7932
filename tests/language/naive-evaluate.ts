import type { Row } from '../../src/language/kind.ts';
import type { BinaryNode, CallNode, Expression } from '../../src/language/tree.ts';
import { FUNCTIONS, type Made } from './made-formula.ts';

/**
 * Works a tree in the plainest way there is: by walking it. Undefined where there is no value;
 * truths are 1 and 0.
 */
export function evaluateNaively(tree: Expression, names: Made): unknown {
  const go = (part: Expression) => evaluateNaively(part, names);
  switch (tree.type) {
    case 'quantity':
    case 'text':
      return tree.value;
    case 'truth':
      return tree.value ? 1 : 0;
    case 'name':
      return tree.name === 'pi' ? Math.PI : names.get(tree.name)!.value;
    case 'field':
      return fieldOf(names.get(tree.owner.name)!.value as Row | readonly Row[], tree.field);
    case 'list':
      return toList(tree.items.map(go));
    case 'unary':
      return tree.operator === 'not'
        ? negate(go(tree.operand))
        : each([go(tree.operand)], (x) => -x!);
    case 'if': {
      const asks = go(tree.condition);
      return asks === undefined ? undefined : go(asks === 1 ? tree.then : tree.else);
    }
    case 'otherwise':
      return go(names.get(tree.name.name)!.blank ? tree.fallback : tree.name);
    case 'binary':
      return binary(tree, go);
    case 'call':
      return call(tree, go);
    default:
      return tree satisfies never;
  }
}

function negate(truth: unknown): unknown {
  return truth === undefined ? undefined : 1 - (truth as number);
}

function fieldOf(owner: Row | readonly Row[], field: string): unknown {
  if (!Array.isArray(owner)) return (owner as Row).cells.get(field);
  return toList(owner.map((row: Row) => row.cells.get(field)));
}

function toList(items: readonly unknown[]): unknown {
  if (items.includes(undefined)) return undefined;
  return typeof items[0] === 'string' ? items : Float64Array.from(items as number[]);
}

/** Element by element where one is a list; undefined where any part has no finite value. */
function each(values: readonly unknown[], run: (...x: number[]) => number): unknown {
  if (values.includes(undefined)) return undefined;
  const lengths = values.flatMap((value) => (value instanceof Float64Array ? [value.length] : []));
  if (new Set(lengths).size > 1) return undefined;
  const at = (i: number) =>
    run(...values.map((value) => (value instanceof Float64Array ? value[i]! : (value as number))));
  const results = Array.from({ length: lengths[0] ?? 1 }, (_, i) => at(i));
  if (!results.every(Number.isFinite)) return undefined;
  return lengths.length === 0 ? results[0] : Float64Array.from(results);
}

const ARITHMETIC: Readonly<Record<string, (a: number, b: number) => number>> = {
  '+': (a, b) => a + b,
  '-': (a, b) => a - b,
  '*': (a, b) => a * b,
  '/': (a, b) => a / b,
  '^': (a, b) => a ** b,
};

const COMPARISONS: Readonly<Record<string, (a: number, b: number) => boolean>> = {
  '<': (a, b) => a < b,
  '<=': (a, b) => a <= b,
  '>': (a, b) => a > b,
  '>=': (a, b) => a >= b,
  '=': (a, b) => a === b,
  '<>': (a, b) => a !== b,
};

function binary({ operator, left, right }: BinaryNode, go: (part: Expression) => unknown): unknown {
  const a = go(left);
  if (operator === 'and' || operator === 'or') {
    return a === undefined || a === (operator === 'or' ? 1 : 0) ? a : go(right);
  }
  const b = go(right);
  const work = ARITHMETIC[operator];
  if (work !== undefined) return each([a, b], (x, y) => work(x!, y!));
  if (a === undefined || b === undefined) return undefined;
  return COMPARISONS[operator]!(a as number, b as number) ? 1 : 0;
}

/** The functions themselves have tests of their own; here only how they are called. */
function call(tree: CallNode, go: (part: Expression) => unknown): unknown {
  const { work, parameters } = FUNCTIONS.get(tree.name)!;
  const given = tree.arguments.map(({ value }) => go(value));
  if (given.includes(undefined)) return undefined;
  const left = parameters.slice(given.length).map(({ fallback }) => fallback);
  const values = [...given, ...left];
  if (work.type === 'each')
    return each(values, (...x) => (work.refuse(...x) === undefined ? work.run(...x) : Number.NaN));
  const reason = work.refuse(...(values as Parameters<typeof work.refuse>));
  return reason === undefined ? work.run(...(values as Parameters<typeof work.run>)) : undefined;
}
