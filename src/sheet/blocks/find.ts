import type { Cursor } from '../../language/cursor.ts';
import { readOperand } from '../../language/parse.ts';
import { fail, type Problem, type Span } from '../../language/problem.ts';
import { readClauses, readWord } from '../clauses.ts';
import { placeProblem } from '../places.ts';
import { readName } from '../read-name.ts';
import type { FindBlock, FindStatement } from '../sheet.ts';
import { attempt, type BlockSource, cursorOver, readStatements } from './block-source.ts';
import { labelFrom } from './named.ts';

/** Reads a `find` block: which value of a given makes a result meet a target. */
export function readFindBlock(block: BlockSource): FindBlock {
  const problems: Problem[] = [];
  const heading = attempt(block, problems, () =>
    readClauses(cursorOver(block, block.info), ['label']),
  );
  const read = readStatements(block, (cursor, span) => readFind(block, cursor, span));
  if (read.statements.length === 0 && read.problems.length === 0) {
    const details = { kind: 'find', example: 'axle_ratio so that cruise is 2000 rpm' };
    problems.push(placeProblem(fail('missing-line', block.info, details), block.places));
  }
  return {
    kind: 'find',
    line: block.line,
    title: heading?.label ?? 'Asked backwards',
    statements: read.statements,
    problems: [...problems, ...read.problems],
  };
}

function readFind(block: BlockSource, cursor: Cursor, span: Span): FindStatement {
  const given = readName(cursor, 'the name of a given');
  readWord(cursor, 'so');
  readWord(cursor, 'that');
  const result = readOperand(cursor);
  readWord(cursor, 'is');
  const target = readOperand(cursor);
  const { label, range, near } = readClauses(cursor, ['label', 'from', 'near']);
  return {
    ...span,
    place: block.places(span.from),
    label: label ?? labelFrom(given.name),
    given,
    result,
    target,
    ...(range === undefined ? {} : { range }),
    ...(near === undefined ? {} : { near }),
  };
}
