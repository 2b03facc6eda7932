import type { Cursor } from '../../language/cursor.ts';
import { fault, readOperand, unexpected } from '../../language/parse.ts';
import { fail, type Problem, type Span } from '../../language/problem.ts';
import type { NameNode } from '../../language/tree.ts';
import { type Clauses, readClauses, readUnit, readWord } from '../clauses.ts';
import { placeProblem } from '../places.ts';
import { readName } from '../read-name.ts';
import type { ChartBlock, ChartLimits, ChartMark, ChartStatement } from '../sheet.ts';
import { attempt, type BlockSource, cursorOver, readStatements } from './block-source.ts';

type Line =
  | { readonly type: 'curve'; readonly curve: Curve }
  | { readonly type: 'mark'; readonly mark: ChartMark }
  | { readonly type: 'limits'; readonly limits: ChartLimits };

type Curve = Omit<ChartStatement, 'title' | 'place' | 'marks' | 'limits'>;

/** Reads a `chart` block: results over a range of one given, with marks and limits. */
export function readChartBlock(block: BlockSource): ChartBlock {
  const problems: Problem[] = [];
  const title = attempt(block, problems, () => readTitle(block));
  const { statements, problems: faults } = readStatements(block, readLine);
  problems.push(...faults);
  const curves = statements.flatMap((line) => (line.type === 'curve' ? [line.curve] : []));
  if (curves.length !== 1 && problems.length === 0) problems.push(wrongCurves(block, curves));
  const isWhole = title !== undefined && problems.length === 0;
  return {
    kind: 'chart',
    line: block.line,
    problems,
    chart: isWhole ? createChart(block, title, curves[0]!, statements) : undefined,
  };
}

function createChart(
  block: BlockSource,
  title: string,
  curve: Curve,
  lines: readonly Line[],
): ChartStatement {
  return {
    ...curve,
    title,
    place: block.places(block.info.from),
    marks: lines.flatMap((line) => (line.type === 'mark' ? [line.mark] : [])),
    limits: lines.flatMap((line) => (line.type === 'limits' ? [line.limits] : [])),
  };
}

function wrongCurves(block: BlockSource, [, second]: readonly Curve[]): Problem {
  const details = { kind: 'chart', example: 'gap over disc_wear from 0 mm to 2 mm' };
  const problem =
    second === undefined
      ? fail('missing-line', block.info, details)
      : fail('repeated-clause', second.over, { clause: `over ${second.over.name}` });
  return placeProblem(problem, block.places);
}

function readTitle(block: BlockSource): string {
  const cursor = cursorOver(block, block.info);
  const { label } = readClauses(cursor, ['label']);
  if (label !== undefined) return label;
  throw fault('missing-name', block.info, {
    kind: 'chart',
    example: 'chart "Gap as the disc wears"',
  });
}

function readLine(cursor: Cursor, span: Span): Line {
  const token = cursor.peek();
  const word = token.type === 'word' ? token.text : '';
  if (word === 'mark') return { type: 'mark', mark: readMark(cursor, span) };
  if (word === 'limits') return { type: 'limits', limits: readLimits(cursor, span) };
  return { type: 'curve', curve: readCurve(cursor, span) };
}

function readCurve(cursor: Cursor, span: Span): Curve {
  const results = readNames(cursor);
  const unit = readAs(cursor);
  readWord(cursor, 'over');
  const over = readName(cursor, 'the name of a given');
  const { range, ...clauses } = readClauses(cursor, ['from', 'and', 'a', 'x', 'y']);
  if (range === undefined) throw unexpected(cursor.peek(), '"from A to B"');
  return {
    results,
    over,
    range,
    ...span,
    ...(unit === undefined ? {} : { unit }),
    ...labels(clauses),
  };
}

function labels({ lines, against, xLabel, yLabel }: Clauses) {
  return {
    ...(against === undefined ? {} : { against }),
    ...(lines === undefined ? {} : { lines }),
    ...(xLabel === undefined ? {} : { xLabel }),
    ...(yLabel === undefined ? {} : { yLabel }),
  };
}

function readNames(cursor: Cursor): NameNode[] {
  const names = [readName(cursor, 'the name of a result')];
  for (
    let next = cursor.peek();
    next.type === 'symbol' && next.text === ',';
    next = cursor.peek()
  ) {
    cursor.take();
    names.push(readName(cursor, 'the name of a result'));
  }
  return names;
}

function readAs(cursor: Cursor) {
  const token = cursor.peek();
  if (token.type !== 'word' || token.text !== 'as') return undefined;
  cursor.take();
  return readUnit(cursor);
}

function readMark(cursor: Cursor, span: Span): ChartMark {
  cursor.take();
  const value = readOperand(cursor);
  const { label = '', axis } = readClauses(cursor, ['label', 'on']);
  return { value, label, ...span, ...(axis === undefined ? {} : { axis }) };
}

function readLimits(cursor: Cursor, span: Span): ChartLimits {
  cursor.take();
  const least = readOperand(cursor);
  readWord(cursor, 'to');
  const most = readOperand(cursor);
  const { label = '' } = readClauses(cursor, ['label']);
  return { least, most, label, ...span };
}
