import type { Cursor } from '../../language/cursor.ts';
import { readOperand, unexpected } from '../../language/parse.ts';
import type { Problem, Span } from '../../language/problem.ts';
import type { Expression } from '../../language/tree.ts';
import { readClauses, readWord } from '../clauses.ts';
import { readName } from '../read-name.ts';
import type { CheckBlock, CheckStatement } from '../sheet.ts';
import { attempt, type BlockSource, cursorOver, readStatements } from './block-source.ts';
import { createNamed } from './named.ts';

/** Reads a `check` block: acceptance windows. */
export function readCheckBlock(block: BlockSource): CheckBlock {
  const problems: Problem[] = [];
  const heading = attempt(block, problems, () => readHeading(cursorOver(block, block.info)));
  const read = readStatements(block, (cursor, span) => readCheck(block, cursor, span));
  return {
    kind: 'check',
    line: block.line,
    layout: 'gauges',
    ...heading,
    statements: read.statements,
    problems: [...problems, ...read.problems],
  };
}

/** `check`, or `check table "Title"`. */
function readHeading(cursor: Cursor): Pick<CheckBlock, 'layout' | 'title'> {
  const word = cursor.peek();
  const isTable = word.type === 'word' && word.text === 'table';
  if (isTable) cursor.take();
  const { label } = readClauses(cursor, ['label']);
  return { layout: isTable ? 'table' : 'gauges', ...(label === undefined ? {} : { title: label }) };
}

function readCheck(block: BlockSource, cursor: Cursor, span: Span): CheckStatement {
  const subject = readName(cursor, 'the name of the value to check');
  const window = readWindow(cursor);
  const clauses = readClauses(cursor, ['label', 'below', 'above', 'source']);
  return {
    ...createNamed(block, subject, span.to, clauses),
    subject,
    ...window,
    ...(clauses.below === undefined ? {} : { below: clauses.below }),
    ...(clauses.above === undefined ? {} : { above: clauses.above }),
  };
}

interface Window {
  readonly least?: Expression;
  readonly most?: Expression;
  readonly equals?: Expression;
}

function readWindow(cursor: Cursor): Window {
  const word = cursor.peek();
  if (word.type === 'word' && word.text === 'between') {
    cursor.take();
    const least = readOperand(cursor);
    readWord(cursor, 'and');
    return { least, most: readOperand(cursor) };
  }
  if (word.type === 'word' && word.text === 'is') {
    cursor.take();
    return { equals: readOperand(cursor) };
  }
  if (word.type !== 'word' || word.text !== 'at') {
    throw unexpected(word, '"between A and B", "at least A", "at most A" or "is A"');
  }
  cursor.take();
  const side = cursor.take();
  if (side.type !== 'word' || (side.text !== 'least' && side.text !== 'most')) {
    throw unexpected(side, '"least" or "most"');
  }
  return { [side.text]: readOperand(cursor) };
}
