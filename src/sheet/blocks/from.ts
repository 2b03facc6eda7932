import type { Cursor } from '../../language/cursor.ts';
import { fail, type Problem, type Span } from '../../language/problem.ts';
import { readClauses } from '../clauses.ts';
import { placeProblem } from '../places.ts';
import { readName, readNewName } from '../read-name.ts';
import type { FromBlock, FromStatement } from '../sheet.ts';
import { type BlockSource, readStatements } from './block-source.ts';
import { createNamed } from './named.ts';

/** Reads a `from` block: values carried in from another sheet. */
export function readFromBlock(block: BlockSource): FromBlock {
  const sheet = block.source.slice(block.info.from, block.info.to).trim();
  const read = readStatements(block, (cursor, span) => readFrom(block, cursor, span));
  return {
    kind: 'from',
    line: block.line,
    sheet,
    sheetPlace: block.places(block.info.from),
    statements: read.statements,
    problems: [...missingSheet(block, sheet), ...read.problems],
  };
}

function missingSheet(block: BlockSource, sheet: string): Problem[] {
  if (sheet !== '') return [];
  const details = { kind: 'from block', example: 'from 20-gearing' };
  return [placeProblem(fail('missing-name', block.info, details), block.places)];
}

function readFrom(block: BlockSource, cursor: Cursor, span: Span): FromStatement {
  const origin = readName(cursor, 'the name of a value on that sheet');
  const next = cursor.peek();
  let name = origin;
  if (next.type === 'word' && next.text === 'as') {
    cursor.take();
    name = readNewName(cursor, 'the name that it is to have here');
  }
  const clauses = readClauses(cursor, ['label', 'source']);
  const labelled = clauses.label !== undefined;
  return { ...createNamed(block, name, span.to, clauses), origin: origin.name, labelled };
}
