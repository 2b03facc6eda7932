import { type Matched, matchArguments } from './arguments.ts';
import {
  type Code,
  constantList,
  type ListRun,
  listCode,
  listSlotCode,
  type NumberRun,
  numberCode,
  type OtherRun,
  otherCode,
  slotCode,
} from './code.ts';
import { compileArithmetic, compileNegation } from './compile-arithmetic.ts';
import { compileCall } from './compile-call.ts';
import type { Functions } from './functions/builtins.ts';
import type { Kind, QuantityList, Row } from './kind.ts';
import type {
  BinaryNode,
  Expression,
  FieldNode,
  IfNode,
  ListNode,
  NameNode,
  OtherwiseNode,
  UnaryNode,
} from './tree.ts';

/** What the compiler needs to know of a checked formula. */
export interface CompileContext {
  readonly functions: Functions;
  /** Kinds of all parts, from the checker. */
  readonly kinds: ReadonlyMap<Expression, Kind>;
  /** Index of the cell with this name. */
  slotOf(name: string): number;
  /**
   * Index in the memory's numbers of a constant. Code that reads its constants there takes a third
   * less room, and so less time, than code that carries them along.
   */
  placeOf?(constant: number): number;
}

/**
 * Compiles a checked formula to closures over plain SI numbers. No source text is made or run.
 *
 * Precondition: the checker found no problem in it.
 */
export function compileExpression(tree: Expression, context: CompileContext): Code {
  switch (tree.type) {
    case 'quantity':
      return compileConstant(tree.value, context);
    case 'text': {
      const { value } = tree;
      return otherCode(() => value);
    }
    case 'truth':
      return compileConstant(tree.value ? 1 : 0, context);
    case 'name':
      return compileName(tree, context);
    case 'field':
      return compileField(tree, context);
    case 'list':
      return compileList(tree, context);
    case 'unary':
      return compileUnary(tree, context);
    case 'binary':
      return compileBinary(tree, context);
    case 'if':
      return compileIf(tree, context);
    case 'otherwise':
      return compileOtherwise(tree, context);
    case 'call':
      return compileFunction(tree, context);
    default:
      return tree satisfies never;
  }
}

function compileConstant(value: number, { placeOf }: CompileContext): Code {
  return placeOf === undefined ? numberCode(() => value) : slotCode(placeOf(value));
}

function compileName(node: NameNode, context: CompileContext): Code {
  if (node.name === 'pi') return compileConstant(Math.PI, context);
  const { kinds, slotOf } = context;
  const slot = slotOf(node.name);
  switch (kinds.get(node)!.type) {
    case 'quantity':
    case 'truth':
      return slotCode(slot);
    case 'list':
      return listSlotCode(slot);
    default:
      return otherCode((memory) => memory.others[slot]);
  }
}

function compileField(node: FieldNode, context: CompileContext): Code {
  const owner = compileName(node.owner, context).run as OtherRun;
  const { field } = node;
  const read: OtherRun =
    context.kinds.get(node.owner)!.type === 'row'
      ? (memory) => (owner(memory) as Row | undefined)?.cells.get(field)
      : columnReader(owner, field);
  return typed(context.kinds.get(node)!, read);
}

/** Rows of a table never change: a column is put together once for as long as they are the same. */
function columnReader(owner: OtherRun, field: string): OtherRun {
  let seen: readonly Row[] | undefined;
  let column: unknown;
  return (memory) => {
    const rows = owner(memory) as readonly Row[] | undefined;
    if (rows !== seen) [seen, column] = [rows, rows && columnOf(rows, field)];
    return column;
  };
}

function columnOf(rows: readonly Row[], field: string): unknown {
  const cells = rows.map((row) => row.cells.get(field));
  return typeof cells[0] === 'number' ? Float64Array.from(cells as number[]) : cells;
}

/** Gives an untyped read the code type of its kind. */
function typed(kind: Kind, read: OtherRun): Code {
  if (kind.type === 'quantity')
    return numberCode((memory) => (read(memory) as number) ?? Number.NaN);
  if (kind.type === 'list') return listCode((memory) => read(memory) as QuantityList | undefined);
  return otherCode(read);
}

function compileList(node: ListNode, context: CompileContext): Code {
  const items = node.items.map((item) => compileExpression(item, context).run);
  if (context.kinds.get(node)!.type === 'list') {
    const constants = node.items.map(maybeQuantity);
    return constants.every((x) => x !== undefined)
      ? constantList(Float64Array.from(constants))
      : compileQuantities(items as NumberRun[]);
  }
  return otherCode((memory) => {
    const texts = items.map((run) => run(memory));
    return texts.includes(undefined) ? undefined : texts;
  });
}

function maybeQuantity(node: Expression): number | undefined {
  return node.type === 'quantity' ? node.value : undefined;
}

function compileQuantities(runs: readonly NumberRun[]): Code {
  return listCode((memory) => {
    const out = new Float64Array(runs.length);
    for (let i = 0; i < runs.length; i += 1) out[i] = runs[i]!(memory);
    return out;
  }, true);
}

function compileUnary(node: UnaryNode, context: CompileContext): Code {
  const operand = compileExpression(node.operand, context);
  if (node.operator === '-') return compileNegation(operand);
  const run = operand.run as NumberRun;
  return numberCode((memory) => 1 - run(memory));
}

function compileBinary(node: BinaryNode, context: CompileContext): Code {
  const left = compileExpression(node.left, context);
  const right = compileExpression(node.right, context);
  switch (node.operator) {
    case 'and':
    case 'or':
      return compileLogic(node.operator, left.run as NumberRun, right.run as NumberRun);
    case '<':
    case '<=':
    case '>':
    case '>=':
    case '=':
    case '<>':
      return compileComparison(node.operator, left, right);
    default:
      return compileArithmetic(node.operator, left, right);
  }
}

/** The right side is not asked where the left one settles it. */
function compileLogic(operator: 'and' | 'or', left: NumberRun, right: NumberRun): Code {
  const settles = operator === 'and' ? 0 : 1;
  return numberCode((memory) => {
    const first = left(memory);
    return first === settles || Number.isNaN(first) ? first : right(memory);
  });
}

const COMPARISONS: Readonly<Record<string, (a: number, b: number) => boolean>> = {
  '<': (a, b) => a < b,
  '<=': (a, b) => a <= b,
  '>': (a, b) => a > b,
  '>=': (a, b) => a >= b,
  '=': (a, b) => a === b,
  '<>': (a, b) => a !== b,
};

function compileComparison(operator: string, left: Code, right: Code): Code {
  if (left.type === 'other') return compareTexts(operator, left.run, right.run as OtherRun);
  const holds = COMPARISONS[operator]!;
  const [a, b] = [left.run as NumberRun, right.run as NumberRun];
  return numberCode((memory) => {
    const x = a(memory);
    const y = b(memory);
    if (x - x !== 0 || y - y !== 0) return Number.NaN;
    return holds(x, y) ? 1 : 0;
  });
}

function compareTexts(operator: string, left: OtherRun, right: OtherRun): Code {
  const wanted = operator === '=';
  return numberCode((memory) => {
    const a = left(memory);
    const b = right(memory);
    if (a === undefined || b === undefined) return Number.NaN;
    return (a === b) === wanted ? 1 : 0;
  });
}

/** Only the branch that is taken is worked. */
function compileIf(node: IfNode, context: CompileContext): Code {
  const asks = compileExpression(node.condition, context).run as NumberRun;
  const then = compileExpression(node.then, context);
  const other = compileExpression(node.else, context);
  return choose(asks, then, other);
}

function compileOtherwise(node: OtherwiseNode, context: CompileContext): Code {
  const slot = context.slotOf(node.name.name);
  const named = compileName(node.name, context);
  return choose(
    (memory) => 1 - memory.blanks[slot]!,
    named,
    compileExpression(node.fallback, context),
  );
}

function choose(asks: NumberRun, then: Code, other: Code): Code {
  if (then.type === 'number') {
    const [a, b] = [then.run, other.run as NumberRun];
    return numberCode((memory) => {
      const answer = asks(memory);
      if (answer === 1) return a(memory);
      return answer === 0 ? b(memory) : Number.NaN;
    });
  }
  const [a, b] = [then.run as OtherRun, other.run as OtherRun];
  const run: OtherRun = (memory) => {
    const answer = asks(memory);
    if (answer === 1) return a(memory);
    return answer === 0 ? b(memory) : undefined;
  };
  return then.type === 'list' ? listCode(run as ListRun) : otherCode(run);
}

function compileFunction(
  node: Extract<Expression, { type: 'call' }>,
  context: CompileContext,
): Code {
  const declaration = context.functions.get(node.name)!;
  const matched = matchArguments(declaration, node) as readonly Matched[];
  const codes = matched.map(({ parameter, value }) => {
    if (value !== undefined) return compileExpression(value, context);
    return compileConstant(parameter.fallback!, context);
  });
  return compileCall(declaration, codes, context.kinds.get(node)!);
}
