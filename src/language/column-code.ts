import { finite } from './code.ts';
import type { CompileContext } from './compile.ts';
import type { Memory } from './memory.ts';
import { divide, raise } from './safe-operators.ts';
import type { ArithmeticOperator, Expression } from './tree.ts';

/** Samples that are worked together: few enough to stay in the nearest memory of the machine. */
export const BLOCK = 1024;

/** For each cell that varies the values of one block of samples; undefined for those that do not. */
export type Columns = readonly (Float64Array | undefined)[];

/** Works a formula for a whole block of samples. The result is overwritten by the next run. */
export type ColumnRun = (columns: Columns, memory: Memory) => Float64Array;

/** One operand: a value for each sample, or one for all. */
type Operand =
  | { readonly type: 'column'; readonly run: ColumnRun }
  | { readonly type: 'single'; readonly run: (memory: Memory) => number };

/**
 * Compiles a formula of plain arithmetic for blocks of samples, many times faster than sample by
 * sample.
 *
 * @param varies whether the cell of this index has a column
 * @returns undefined for formulas with lists, branches or functions of whole values: those are
 *   worked sample by sample
 */
export function compileColumns(
  tree: Expression,
  context: CompileContext,
  varies: (slot: number) => boolean,
): ColumnRun | undefined {
  const operand = compileOperand(tree, context, varies);
  if (operand === undefined) return undefined;
  if (operand.type === 'column') return operand.run;
  const block = new Float64Array(BLOCK);
  return (_, memory) => block.fill(operand.run(memory));
}

function compileOperand(
  tree: Expression,
  context: CompileContext,
  varies: (slot: number) => boolean,
): Operand | undefined {
  if (context.kinds.get(tree)?.type !== 'quantity') return undefined;
  switch (tree.type) {
    case 'quantity': {
      const { value } = tree;
      return { type: 'single', run: () => value };
    }
    case 'name':
      return compileName(tree.name, context, varies);
    case 'unary': {
      const operand = compileOperand(tree.operand, context, varies);
      return operand && mapOperand(operand, (x) => -x);
    }
    case 'binary': {
      const left = compileOperand(tree.left, context, varies);
      const right = compileOperand(tree.right, context, varies);
      return left && right && joinOperands(tree.operator as ArithmeticOperator, left, right);
    }
    case 'call':
      return compileEach(tree, context, varies);
    default:
      return undefined;
  }
}

function compileName(
  name: string,
  { slotOf }: CompileContext,
  varies: (slot: number) => boolean,
): Operand {
  if (name === 'pi') return { type: 'single', run: () => Math.PI };
  const slot = slotOf(name);
  if (varies(slot)) return { type: 'column', run: (columns) => columns[slot]! };
  return { type: 'single', run: ({ numbers }) => numbers[slot]! };
}

/** Functions of one number, such as the trigonometric ones. */
function compileEach(
  tree: Extract<Expression, { type: 'call' }>,
  context: CompileContext,
  varies: (slot: number) => boolean,
): Operand | undefined {
  const { work, parameters } = context.functions.get(tree.name)!;
  const [argument] = tree.arguments;
  if (work.type !== 'each' || parameters.length !== 1 || argument === undefined) return undefined;
  const operand = compileOperand(argument.value, context, varies);
  const { run } = work;
  return operand && mapOperand(operand, (x) => finite(run(finite(x))));
}

function mapOperand(operand: Operand, work: (x: number) => number): Operand {
  if (operand.type === 'single') {
    const { run } = operand;
    return { type: 'single', run: (memory) => work(run(memory)) };
  }
  const { run } = operand;
  const block = new Float64Array(BLOCK);
  return {
    type: 'column',
    run(columns, memory) {
      const x = run(columns, memory);
      for (let i = 0, n = block.length; i < n; i += 1) block[i] = work(x[i]!);
      return block;
    },
  };
}

type Fill = (block: Float64Array, a: Float64Array, b: Float64Array) => void;
type FillRight = (block: Float64Array, a: Float64Array, b: number) => void;

/** Loops written out one by one: a loop that calls a function for its operator is no faster than one sample after another. */
const PAIRS: Readonly<Record<ArithmeticOperator, Fill>> = {
  '+': (block, a, b) => {
    for (let i = 0, n = block.length; i < n; i += 1) block[i] = a[i]! + b[i]!;
  },
  '-': (block, a, b) => {
    for (let i = 0, n = block.length; i < n; i += 1) block[i] = a[i]! - b[i]!;
  },
  '*': (block, a, b) => {
    for (let i = 0, n = block.length; i < n; i += 1) block[i] = a[i]! * b[i]!;
  },
  '/': (block, a, b) => {
    for (let i = 0, n = block.length; i < n; i += 1) block[i] = divide(a[i]!, b[i]!);
  },
  '^': (block, a, b) => {
    for (let i = 0, n = block.length; i < n; i += 1) block[i] = raise(a[i]!, b[i]!);
  },
};

const SINGLE_RIGHT: Readonly<Record<ArithmeticOperator, FillRight>> = {
  '+': (block, a, b) => {
    for (let i = 0, n = block.length; i < n; i += 1) block[i] = a[i]! + b;
  },
  '-': (block, a, b) => {
    for (let i = 0, n = block.length; i < n; i += 1) block[i] = a[i]! - b;
  },
  '*': (block, a, b) => {
    for (let i = 0, n = block.length; i < n; i += 1) block[i] = a[i]! * b;
  },
  '/': (block, a, b) => {
    for (let i = 0, n = block.length; i < n; i += 1) block[i] = divide(a[i]!, b);
  },
  '^': (block, a, b) => {
    for (let i = 0, n = block.length; i < n; i += 1) block[i] = raise(a[i]!, b);
  },
};

const ON_SINGLES: Readonly<Record<ArithmeticOperator, (a: number, b: number) => number>> = {
  '+': (a, b) => a + b,
  '-': (a, b) => a - b,
  '*': (a, b) => a * b,
  '/': divide,
  '^': raise,
};

function joinOperands(operator: ArithmeticOperator, left: Operand, right: Operand): Operand {
  if (left.type === 'single' && right.type === 'single') {
    const [a, b, work] = [left.run, right.run, ON_SINGLES[operator]];
    return { type: 'single', run: (memory) => work(a(memory), b(memory)) };
  }
  const block = new Float64Array(BLOCK);
  if (left.type === 'column' && right.type === 'single') {
    const [a, b, fill] = [left.run, right.run, SINGLE_RIGHT[operator]];
    return {
      type: 'column',
      run(columns, memory) {
        fill(block, a(columns, memory), b(memory));
        return block;
      },
    };
  }
  const [a, b, fill] = [asColumn(left), asColumn(right), PAIRS[operator]];
  return {
    type: 'column',
    run(columns, memory) {
      fill(block, a(columns, memory), b(columns, memory));
      return block;
    },
  };
}

function asColumn(operand: Operand): ColumnRun {
  if (operand.type === 'column') return operand.run;
  const block = new Float64Array(BLOCK);
  const { run } = operand;
  return (_, memory) => block.fill(run(memory));
}
