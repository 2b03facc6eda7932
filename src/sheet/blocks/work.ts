import type { Cursor } from '../../language/cursor.ts';
import { readExpression } from '../../language/parse.ts';
import type { Span } from '../../language/problem.ts';
import { type Clauses, readClauses } from '../clauses.ts';
import { readEquals, readNewName } from '../read-name.ts';
import type { Signs, WorkBlock, WorkStatement } from '../sheet.ts';
import { type BlockSource, readStatements } from './block-source.ts';
import { createDisplay, createNamed } from './named.ts';

/** Reads a `work` block: formulas. */
export function readWorkBlock(block: BlockSource): WorkBlock {
  const read = readStatements(block, (cursor, span) => readWork(block, cursor, span));
  return { kind: 'work', line: block.line, ...read };
}

function readWork(block: BlockSource, cursor: Cursor, span: Span): WorkStatement {
  const name = readNewName(cursor, 'the name of a result');
  readEquals(cursor);
  const expression = readExpression(cursor);
  const clauses = readClauses(cursor, [
    'label',
    'as',
    'to',
    'valid',
    'positive',
    'negative',
    'zero',
    'source',
  ]);
  return {
    ...createNamed(block, name, span.to, clauses),
    expression,
    display: createDisplay(clauses),
    signs: createSigns(clauses),
    ...(clauses.valid === undefined ? {} : { valid: clauses.valid }),
  };
}

function createSigns({ positive, negative, zero }: Clauses): Signs {
  return {
    ...(positive === undefined ? {} : { positive }),
    ...(negative === undefined ? {} : { negative }),
    ...(zero === undefined ? {} : { zero }),
  };
}
