import { compileExpression } from '../language/compile.ts';
import { BUILTINS, createFunctions, type Functions } from '../language/functions/builtins.ts';
import { fail, type Problem } from '../language/problem.ts';
import { TRADE } from '../trade/trade-functions.ts';
import type { Cell, Chart, Check, Drawing, Figures, Find, Practice } from './cell.ts';
import { type Draft, type Drafts, draftCells, inputsOf } from './drafts.ts';
import { linkCell } from './link-cell.ts';
import { linkChart } from './link-chart.ts';
import { linkCheck } from './link-check.ts';
import { linkDrawing } from './link-drawing.ts';
import { linkFigures } from './link-figures.ts';
import { linkFind } from './link-find.ts';
import type { LinkContext } from './link-formula.ts';
import { linkPractice } from './link-practice.ts';
import { orderCells } from './order.ts';
import type { Part, Sheet } from './sheet.ts';
import { createSteps, type Steps } from './step.ts';

/** Sheets linked into one whole: every value of every sheet, checked, compiled and in order. */
export interface Book {
  readonly sheets: readonly Sheet[];
  /** Cell `i` has index `i`. */
  readonly cells: readonly Cell[];
  /** Indices such that each cell comes after those it reads; cells in a loop are left out. */
  readonly order: readonly number[];
  /** How to work each cell. */
  readonly steps: Steps;
  /** What the steps look for in the memory behind the numbers of the cells. */
  readonly constants: readonly number[];
  readonly checks: readonly Check[];
  readonly charts: readonly Chart[];
  readonly drawings: readonly Drawing[];
  readonly figures: readonly Figures[];
  readonly finds: readonly Find[];
  readonly practices: readonly Practice[];
  /** All that is wrong with the sheets, those faults included that their reading found. */
  readonly problems: readonly Problem[];
  readonly functions: Functions;
  find(sheet: string, name: string): Cell | undefined;
  /** The values of one sheet in the order in which they are written. */
  cellsOf(sheet: string): readonly Cell[];
}

const FUNCTIONS = createFunctions([...BUILTINS, ...TRADE]);

/** Links sheets: names, loops, kinds, dimensions; nothing is computed yet. */
export function linkBook(sheets: readonly Sheet[]): Book {
  const drafts = draftCells(sheets);
  const inputs = drafts.drafts.map((draft) => inputsOf(draft, drafts));
  const { order, loops } = orderCells(inputs);
  const problems = [...sheets.flatMap((sheet) => sheet.problems), ...drafts.problems];
  const loopProblems = reportLoops(loops, drafts, problems);
  const cells: Cell[] = new Array(drafts.drafts.length);
  const looped = [...loopProblems.keys()];
  for (const index of [...looped, ...order]) {
    const draft = drafts.drafts[index]!;
    const loop = loopProblems.get(index);
    const linked = linkCell(draft, {
      drafts,
      cells,
      functions: FUNCTIONS,
      inputs: inputs[index]!,
      loop,
    });
    cells[index] = linked.cell;
    problems.push(...linked.problems);
  }
  const checks = drafts.checks.map((check, index) =>
    linkCheck(check, index, { drafts, cells, functions: FUNCTIONS }),
  );
  const context = { drafts, cells, functions: FUNCTIONS };
  const charts = linkCharts(sheets, context);
  const drawings = linkDrawings(sheets, context);
  const figures = linkAllFigures(sheets, context);
  const finds = linkFinds(sheets, context);
  const practices = linkPractices(sheets, context);
  const linked = [...checks, ...charts, ...drawings, ...figures, ...finds, ...practices];
  problems.push(...linked.flatMap(({ problem }) => ownProblem(problem)));
  return createBook(sheets, drafts, {
    cells,
    order,
    checks,
    charts,
    drawings,
    figures,
    finds,
    practices,
    problems: sortProblems(problems),
  });
}

/** Links what stands in one kind of block, sheet by sheet. */
function linkEach<T>(
  sheets: readonly Sheet[],
  link: (part: Part, sheet: Sheet) => readonly T[],
): readonly T[] {
  return sheets.flatMap((sheet) => sheet.parts.flatMap((part) => link(part, sheet)));
}

function linkCharts(sheets: readonly Sheet[], context: LinkContext): readonly Chart[] {
  return linkEach(sheets, (part, sheet) =>
    part.kind === 'chart' && part.chart !== undefined
      ? [linkChart(part.chart, sheet, context)]
      : [],
  );
}

function linkDrawings(sheets: readonly Sheet[], context: LinkContext): readonly Drawing[] {
  return linkEach(sheets, (part, sheet) =>
    part.kind === 'drawing' && part.drawing !== undefined
      ? [linkDrawing(part.drawing, sheet, context)]
      : [],
  );
}

function linkAllFigures(sheets: readonly Sheet[], context: LinkContext): readonly Figures[] {
  return linkEach(sheets, (part, sheet) =>
    part.kind === 'figures' && part.figures !== undefined
      ? [linkFigures(part.figures, sheet, context)]
      : [],
  );
}

function linkFinds(sheets: readonly Sheet[], context: LinkContext): readonly Find[] {
  return linkEach(sheets, (part, sheet) =>
    part.kind === 'find' ? part.statements.map((find) => linkFind(find, sheet, context)) : [],
  );
}

function linkPractices(sheets: readonly Sheet[], context: LinkContext): readonly Practice[] {
  return linkEach(sheets, (part, sheet) =>
    part.kind === 'practice' && part.practice !== undefined
      ? [linkPractice(part.practice, sheet, context)]
      : [],
  );
}

function ownProblem(problem: Problem | undefined): Problem[] {
  return problem === undefined || problem.code === 'waiting' ? [] : [problem];
}

function createBook(
  sheets: readonly Sheet[],
  drafts: Drafts,
  parts: Omit<Book, 'steps' | 'constants' | 'sheets' | 'functions' | 'find' | 'cellsOf'>,
): Book {
  const bySheet = new Map<string, Cell[]>(sheets.map(({ name }) => [name, []]));
  for (const cell of parts.cells) bySheet.get(cell.sheet)!.push(cell);
  return {
    ...parts,
    ...compileSteps(parts.cells, parts.order, drafts),
    sheets,
    functions: FUNCTIONS,
    find(sheet, name) {
      const index = drafts.names.get(sheet)?.get(name);
      return index === undefined ? undefined : parts.cells[index];
    },
    cellsOf: (sheet) => bySheet.get(sheet) ?? [],
  };
}

/**
 * How to work each cell. Formulas are compiled once more, in the order in which they are worked: what
 * is worked together then lies together in the memory of the machine, and not among the leavings of
 * the linking, which on large sheets doubles the speed.
 */
function compileSteps(
  cells: readonly Cell[],
  order: readonly number[],
  { names }: Drafts,
): Pick<Book, 'steps' | 'constants'> {
  const places = new Map<number, number>();
  const placeOf = (constant: number) => {
    const place = places.get(constant) ?? cells.length + places.size;
    places.set(constant, place);
    return place;
  };
  const steps = createSteps(cells, order, ({ tree, kinds }, { sheet }) => {
    const own = names.get(sheet)!;
    return compileExpression(tree, {
      functions: FUNCTIONS,
      kinds,
      placeOf,
      slotOf: (name) => own.get(name)!,
    });
  });
  return { steps, constants: [...places.keys()] };
}

/** Mutates `problems`: one for each loop. Gives every cell of a loop the problem that bars it. */
function reportLoops(
  loops: readonly (readonly number[])[],
  { drafts }: Drafts,
  problems: Problem[],
): ReadonlyMap<number, Problem> {
  const found = new Map<number, Problem>();
  for (const loop of loops) {
    const start = drafts[Math.min(...loop)]!;
    const problem = loopProblem(start, loop, drafts);
    problems.push(problem);
    for (const index of loop) if (!found.has(index)) found.set(index, problem);
  }
  return found;
}

function loopProblem(start: Draft, loop: readonly number[], drafts: readonly Draft[]): Problem {
  const turned = [
    ...loop.slice(loop.indexOf(start.index)),
    ...loop.slice(0, loop.indexOf(start.index)),
  ];
  const path = [...turned, start.index].map((index) => {
    const { statement, sheet } = drafts[index]!;
    return sheet === start.sheet ? statement.name : `${sheet.name}: ${statement.name}`;
  });
  const { from, to, place, name } = start.statement;
  return { ...fail('loop', { from, to }, { path: shortenPath(path) }), place, cell: name };
}

/** Nobody reads a loop of hundreds of names; its start and its end tell where it runs. */
function shortenPath(path: readonly string[]): readonly string[] {
  return path.length <= 12 ? path : [...path.slice(0, 8), '…', ...path.slice(-3)];
}

function sortProblems(problems: readonly Problem[]): readonly Problem[] {
  const key = ({ place }: Problem) => [place?.line ?? 0, place?.column ?? 0] as const;
  return [...problems].sort((a, b) => {
    const files = (a.place?.file ?? '').localeCompare(b.place?.file ?? '');
    const [lineA, columnA] = key(a);
    const [lineB, columnB] = key(b);
    return files || lineA - lineB || columnA - columnB;
  });
}
