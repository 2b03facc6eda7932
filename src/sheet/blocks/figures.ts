import type { Cursor } from '../../language/cursor.ts';
import type { Problem, Span } from '../../language/problem.ts';
import { readClauses } from '../clauses.ts';
import { readName } from '../read-name.ts';
import type { FigureSheet, FigureStatement, FiguresBlock } from '../sheet.ts';
import { attempt, type BlockSource, cursorOver, readStatements } from './block-source.ts';

/** Reads a `figures` block: named values set out as a table that is fit to print. */
export function readFiguresBlock(block: BlockSource): FiguresBlock {
  const problems: Problem[] = [];
  const heading = attempt(block, problems, () =>
    readClauses(cursorOver(block, block.info), ['label']),
  );
  const { statements, problems: faults } = readStatements(block, readLine);
  problems.push(...faults);
  const lines = spreadSheets(statements);
  const isWhole = problems.length === 0 && lines.length > 0;
  const place = block.places(block.info.from);
  const { from, to } = block.body;
  const title = heading?.label ?? 'Figures';
  return {
    kind: 'figures',
    line: block.line,
    problems,
    figures: isWhole ? { title, place, figures: lines, from, to } : undefined,
  };
}

type Line = { readonly figure: FigureStatement } | { readonly sheet: FigureSheet };

/** `gap "Label"`, or `from 70-release-bearing`: then the lines below it are that sheet's. */
function readLine(cursor: Cursor, span: Span): Line {
  const word = cursor.peek();
  if (word.type === 'word' && word.text === 'from') {
    const text = cursor.source.slice(word.to, span.to);
    const from = word.to + text.length - text.trimStart().length;
    return { sheet: { name: text.trim(), from, to: from + text.trim().length } };
  }
  const name = readName(cursor, 'the name of a value, as in: gap "Bearing gap as set"');
  const { label } = readClauses(cursor, ['label']);
  return { figure: { name, ...span, ...(label === undefined ? {} : { label }) } };
}

function spreadSheets(lines: readonly Line[]): readonly FigureStatement[] {
  const figures: FigureStatement[] = [];
  let sheet: FigureSheet | undefined;
  for (const line of lines) {
    if ('sheet' in line) sheet = line.sheet;
    else figures.push(sheet === undefined ? line.figure : { ...line.figure, sheet });
  }
  return figures;
}
