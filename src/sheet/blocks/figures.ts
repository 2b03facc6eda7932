import type { Cursor } from '../../language/cursor.ts';
import type { Problem, Span } from '../../language/problem.ts';
import { readClauses } from '../clauses.ts';
import { readName } from '../read-name.ts';
import type { FigureStatement, FiguresBlock } from '../sheet.ts';
import { attempt, type BlockSource, cursorOver, readStatements } from './block-source.ts';

/** Reads a `figures` block: named values set out as a table that is fit to print. */
export function readFiguresBlock(block: BlockSource): FiguresBlock {
  const problems: Problem[] = [];
  const heading = attempt(block, problems, () =>
    readClauses(cursorOver(block, block.info), ['label']),
  );
  const { statements, problems: faults } = readStatements(block, readFigure);
  problems.push(...faults);
  const isWhole = problems.length === 0 && statements.length > 0;
  const place = block.places(block.info.from);
  const { from, to } = block.body;
  const title = heading?.label ?? 'Figures';
  return {
    kind: 'figures',
    line: block.line,
    problems,
    table: isWhole ? { title, place, figures: statements, from, to } : undefined,
  };
}

function readFigure(cursor: Cursor, span: Span): FigureStatement {
  const name = readName(cursor, 'the name of a value, as in: gap "Bearing gap as set"');
  const { label } = readClauses(cursor, ['label']);
  return { name, ...span, ...(label === undefined ? {} : { label }) };
}
