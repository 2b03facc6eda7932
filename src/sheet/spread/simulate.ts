import { BLOCK, type ColumnRun, compileColumns } from '../../language/column-code.ts';
import type { Memory } from '../../language/memory.ts';
import type { Book } from '../book.ts';
import type { Cell, Formula } from '../cell.ts';
import { copyFrame, type Frame } from '../frame.ts';
import { createProbe, pathBetween } from '../probe.ts';
import { createRandomNumbers, type FillRandom } from './random-numbers.ts';
import { type Doubt, listDoubts } from './uncertain-inputs.ts';

export interface SimulationOptions {
  /** How many; rounded up to whole blocks of 1024. */
  readonly samples: number;
  /** The same seed gives the same samples. */
  readonly seed: number;
  /** Which number of a list, from 0. */
  readonly element?: number;
  /** Those of the readings, unless others are to be taken. */
  readonly doubts?: readonly Doubt[];
}

/**
 * Draws all doubted givens at random from their distributions and works the result each time
 * (Monte Carlo). Yields after each block, so that whoever runs it can report, wait or stop.
 *
 * @returns the samples in the order of drawing, SI; NaN where a draw has no result
 * Source: JCGM 101, clause 7.
 */
export function* simulate(
  book: Book,
  frame: Frame,
  result: number,
  { samples, seed, element = 0, doubts = listDoubts(book, frame, result) }: SimulationOptions,
): Generator<number, Float64Array> {
  const blocks = Math.ceil(samples / BLOCK);
  const found = new Float64Array(blocks * BLOCK);
  const work = createBlockWork(book, frame, result, { doubts, element, seed });
  for (let i = 0; i < blocks; i += 1) {
    found.set(work(), i * BLOCK);
    yield (i + 1) / blocks;
  }
  return found;
}

/** Runs a simulation to its end. */
export function runSimulation(
  book: Book,
  frame: Frame,
  result: number,
  options: SimulationOptions,
): Float64Array {
  const run = simulate(book, frame, result, options);
  for (;;) {
    const step = run.next();
    if (step.done) return step.value;
  }
}

/** Gives, at each call, one more block of samples of the result. */
function createBlockWork(
  book: Book,
  frame: Frame,
  result: number,
  { doubts, element, seed }: Pick<Required<SimulationOptions>, 'doubts' | 'element' | 'seed'>,
): () => Float64Array {
  const cells = [...new Set(doubts.map(({ cell }) => cell))];
  const columns: (Float64Array | undefined)[] = [];
  for (const cell of cells) columns[cell] = new Float64Array(BLOCK);
  const draw = createDraw(doubts, frame.memory, columns, createRandomNumbers(seed));
  const path = pathBetween(book, cells, [result]);
  const isPlain = path.every((index) => book.cells[index]!.kind?.type === 'quantity');
  const work = isPlain
    ? workColumns(book, frame, path, result, columns)
    : workSamples(book, frame, cells, result, element, columns);
  return () => {
    draw();
    return work();
  };
}

/** Fills the columns of the doubted givens with draws. */
function createDraw(
  doubts: readonly Doubt[],
  { numbers }: Memory,
  columns: readonly (Float64Array | undefined)[],
  fillRandom: FillRandom,
): () => void {
  const begun = new Set<number>();
  const fills = doubts.map((doubt) => {
    const { cell } = doubt;
    const column = columns[cell]!;
    // The first doubt of a given starts from its value, a further one from what is there.
    const base = begun.has(cell) ? column : new Float64Array(BLOCK).fill(numbers[cell]!);
    begun.add(cell);
    return doubt.shape === 'rectangular'
      ? addRectangular(doubt, base, column, fillRandom)
      : addStudent(doubt, base, column, fillRandom);
  });
  return () => doAll(fills);
}

function addRectangular(
  { shift, u }: Doubt,
  base: Float64Array,
  column: Float64Array,
  fillRandom: FillRandom,
): () => void {
  const width = 2 * u * Math.sqrt(3);
  const low = shift - width / 2;
  const random = new Float64Array(BLOCK);
  return () => {
    fillRandom(random);
    fillRectangular(column, base, low, width, random);
  };
}

/** Mutates the column. No closure, so that the machine compiles it once for all. */
function fillRectangular(
  column: Float64Array,
  base: Float64Array,
  low: number,
  width: number,
  random: Float64Array,
): void {
  const { length } = column;
  for (let i = 0; i < length; i += 1) column[i] = base[i]! + (low + width * random[i]!);
}

/** Student's t by the polar method of Bailey, Mathematics of Computation 62 (1994) (from memory). */
function addStudent(
  { shift, u, dof }: Doubt,
  base: Float64Array,
  column: Float64Array,
  fillRandom: FillRandom,
): () => void {
  const random = new Float64Array(2 * BLOCK);
  return () => {
    fillRandom(random);
    fillStudent(column, base, { shift, u, dof }, random);
  };
}

/** Mutates the column. */
function fillStudent(
  column: Float64Array,
  base: Float64Array,
  { shift, u, dof }: Pick<Doubt, 'shift' | 'u' | 'dof'>,
  random: Float64Array,
): void {
  const { length } = column;
  for (let i = 0; i < length; i += 1) {
    const radius = Math.sqrt(polar(1 - random[2 * i]!, dof));
    column[i] = base[i]! + (shift + u * radius * Math.cos(2 * Math.PI * random[2 * i + 1]!));
  }
}

/** Squared radius; for a normal distribution, of endless degrees of freedom, that of Box and Muller. */
function polar(share: number, dof: number): number {
  return Number.isFinite(dof) ? dof * (share ** (-2 / dof) - 1) : -2 * Math.log(share);
}

/** All cells on the way hold one number each: worked a block at a time. */
function workColumns(
  book: Book,
  frame: Frame,
  path: readonly number[],
  result: number,
  columns: (Float64Array | undefined)[],
): () => Float64Array {
  const { memory } = copyFrame(frame);
  const varying = new Set([...columns.keys()].filter((slot) => columns[slot] !== undefined));
  for (const index of path) varying.add(index);
  const runs = path.map((index) => {
    const run = columnRun(book, book.cells[index]!, varying, memory);
    return () => {
      columns[index] = run(columns, memory);
    };
  });
  const constant = new Float64Array(BLOCK).fill(memory.numbers[result]!);
  return () => {
    doAll(runs);
    return columns[result] ?? constant;
  };
}

/** By number: walked by an iterator, what is done is made into one piece that runs at half the speed. */
function doAll(work: readonly (() => void)[]): void {
  for (let i = 0; i < work.length; i += 1) work[i]!();
}

function columnRun(
  book: Book,
  cell: Cell,
  varying: ReadonlySet<number>,
  memory: Memory,
): ColumnRun {
  if (cell.role === 'from') return (columns) => columns[cell.origin!]!;
  const { formula } = cell as Cell & { readonly formula: Formula };
  const slotOf = (name: string) => book.find(cell.sheet, name)!.index;
  const context = { functions: book.functions, kinds: formula.kinds, slotOf };
  return (
    compileColumns(formula.tree, context, (slot) => varying.has(slot)) ??
    oneByOne(cell, formula, varying, memory)
  );
}

/** Branches and functions of whole values: sample after sample. Mutates the memory it is given. */
function oneByOne(
  cell: Cell,
  { code }: Formula,
  varying: ReadonlySet<number>,
  { numbers }: Memory,
): ColumnRun {
  const inputs = cell.inputs.filter((input) => varying.has(input));
  const block = new Float64Array(BLOCK);
  return (columns, memory) => {
    for (let i = 0; i < BLOCK; i += 1) {
      for (const input of inputs) numbers[input] = columns[input]![i]!;
      block[i] = code.run(memory) as number;
    }
    return block;
  };
}

/** Lists on the way: the whole path is worked for each sample. */
function workSamples(
  book: Book,
  frame: Frame,
  cells: readonly number[],
  result: number,
  element: number,
  columns: readonly (Float64Array | undefined)[],
): () => Float64Array {
  const probe = createProbe(book, frame, cells, [result]);
  const block = new Float64Array(BLOCK);
  return () => {
    for (let i = 0; i < BLOCK; i += 1) {
      block[i] = probe.at(cells.map((cell) => columns[cell]![i]!))[element] ?? Number.NaN;
    }
    return block;
  };
}
