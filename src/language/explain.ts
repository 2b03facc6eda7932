import { type Matched, matchArguments } from './arguments.ts';
import { type CompileContext, compileExpression } from './compile.ts';
import { isThere } from './compile-call.ts';
import type { FunctionDeclaration } from './functions/declaration.ts';
import type { QuantityList, Value } from './kind.ts';
import type { Memory } from './memory.ts';
import { fail, type Problem } from './problem.ts';
import { divide, raise } from './safe-operators.ts';
import type { BinaryNode, CallNode, Expression, ListNode } from './tree.ts';

/** What the explainer needs besides the compiler's knowledge. */
export interface ExplainContext extends CompileContext {
  readonly memory: Memory;
  readonly source: string;
  /** Why the cell of this name has no value, in words that follow "which": "is blank". */
  whyNot(name: string): string;
}

/**
 * Tells why a formula has no value: walks it in the order of working and stops at the first part
 * that has none though all before it had. Slow path: asked only when the compiled code gave none.
 */
export function explain(tree: Expression, context: ExplainContext): Problem {
  return explainPart(tree, context) ?? fail('overflow', tree, undefined);
}

function explainPart(tree: Expression, context: ExplainContext): Problem | undefined {
  if (isThere(workOut(tree, context))) return undefined;
  switch (tree.type) {
    case 'name':
    case 'field':
      return explainName(tree.type === 'name' ? tree : tree.owner, context);
    case 'if':
      return explainIf(tree, context);
    case 'otherwise': {
      const blank = context.memory.blanks[context.slotOf(tree.name.name)] === 1;
      return explainPart(blank ? tree.fallback : tree.name, context);
    }
    case 'binary':
      return explainBinary(tree, context);
    case 'unary':
      return explainPart(tree.operand, context);
    case 'list':
      return explainList(tree, context);
    case 'call':
      return explainCall(tree, context);
    default:
      return undefined;
  }
}

function workOut(tree: Expression, context: ExplainContext): Value | undefined {
  return compileExpression(tree, context).run(context.memory) as Value | undefined;
}

function explainName(
  node: Extract<Expression, { type: 'name' }>,
  context: ExplainContext,
): Problem {
  const why = context.whyNot(node.name);
  return { ...fail('waiting', node, { name: node.name, why }), waitsFor: node.name };
}

function explainIf(
  node: Extract<Expression, { type: 'if' }>,
  context: ExplainContext,
): Problem | undefined {
  const answer = workOut(node.condition, context) as unknown as number;
  if (Number.isNaN(answer)) return explainPart(node.condition, context);
  return explainPart(answer === 1 ? node.then : node.else, context);
}

function firstOf(parts: readonly Expression[], context: ExplainContext): Problem | undefined {
  for (const part of parts) {
    const problem = explainPart(part, context);
    if (problem !== undefined) return problem;
  }
  return undefined;
}

function explainList(node: ListNode, context: ExplainContext): Problem | undefined {
  return firstOf(node.items, context);
}

function explainBinary(node: BinaryNode, context: ExplainContext): Problem | undefined {
  const inside = firstOf([node.left, node.right], context);
  if (inside !== undefined) return inside;
  const left = workOut(node.left, context);
  const right = workOut(node.right, context);
  if (
    left instanceof Float64Array &&
    right instanceof Float64Array &&
    left.length !== right.length
  ) {
    return fail('list-length', node, { left: `${left.length} elements`, right: `${right.length}` });
  }
  if (node.operator === '/') return explainDivision(node, left!, right!, context);
  if (node.operator === '^') return explainPower(node, left!, right!, context);
  return fail('overflow', node, undefined);
}

type Numbers = number | QuantityList;

/** Pairs of elements that are worked together; a single number goes with each element. */
function pairs(left: Value, right: Value): readonly (readonly [number, number])[] {
  const [a, b] = [left as Numbers, right as Numbers];
  const length = typeof a === 'number' ? (typeof b === 'number' ? 1 : b.length) : a.length;
  const at = (x: Numbers, i: number) => (typeof x === 'number' ? x : x[i]!);
  return Array.from({ length }, (_, i) => [at(a, i), at(b, i)] as const);
}

function explainDivision(
  node: BinaryNode,
  left: Value,
  right: Value,
  { source }: ExplainContext,
): Problem {
  const bad = pairs(left, right).find(([a, b]) => Number.isNaN(divide(a, b)));
  if (bad === undefined || bad[1] !== 0) return fail('overflow', node, undefined);
  const text = source.slice(node.right.from, node.right.to);
  const divisor = describeDivisor(node.right, right, text);
  return fail('division-by-zero', node, { divisor });
}

function describeDivisor(node: Expression, value: Value, text: string): string {
  if (node.type === 'quantity') return 'the divisor is written as 0';
  return value instanceof Float64Array ? `an element of ${text} is 0` : `${text} is 0`;
}

function explainPower(
  node: BinaryNode,
  left: Value,
  right: Value,
  { source }: ExplainContext,
): Problem {
  const [a, b] = pairs(left, right).find((pair) => Number.isNaN(raise(...pair)))!;
  const base = source.slice(node.left.from, node.left.to);
  const exponent = source.slice(node.right.from, node.right.to);
  if (a === 0) {
    return fail('division-by-zero', node, { divisor: describeDivisor(node.left, left, base) });
  }
  return a < 0 && Number.isNaN(a ** b)
    ? fail('not-a-power', node, { base, exponent })
    : fail('overflow', node, undefined);
}

function explainCall(node: CallNode, context: ExplainContext): Problem | undefined {
  const declaration = context.functions.get(node.name)!;
  const matched = matchArguments(declaration, node) as readonly Matched[];
  const given = matched.flatMap(({ value }) => (value === undefined ? [] : [value]));
  const inside = firstOf(given, context);
  if (inside !== undefined) return inside;
  const values = matched.map(({ parameter, value }) =>
    value === undefined ? parameter.fallback! : workOut(value, context)!,
  );
  const reason = refusal(declaration, values);
  if (reason === undefined) return fail('overflow', node, undefined);
  return fail('out-of-domain', node, { sentence: `${node.name}: ${reason}` });
}

function refusal({ work }: FunctionDeclaration, values: readonly Value[]): string | undefined {
  if (work.type === 'whole') return work.refuse(...values);
  const length = Math.max(
    1,
    ...values.map((value) => (typeof value === 'number' ? 1 : (value as QuantityList).length)),
  );
  for (let i = 0; i < length; i += 1) {
    const numbers = values.map((value) =>
      typeof value === 'number' ? value : (value as QuantityList)[i]!,
    );
    const reason = numbers.some((x) => x === undefined)
      ? 'its lists are not equally long'
      : work.refuse(...numbers);
    if (reason !== undefined) return reason;
  }
  return undefined;
}
