import type { Cursor } from '../../language/cursor.ts';
import { readExpression } from '../../language/parse.ts';
import type { Problem, Span } from '../../language/problem.ts';
import { readClauses } from '../clauses.ts';
import { readEquals, readName } from '../read-name.ts';
import type { DrawingBlock, DrawingSlotStatement, DrawingStatement } from '../sheet.ts';
import { attempt, type BlockSource, cursorOver, readStatements } from './block-source.ts';
import { labelFrom } from './named.ts';

/** Reads a `drawing` block: a named kind of drawing whose slots are bound to values. */
export function readDrawingBlock(block: BlockSource): DrawingBlock {
  const problems: Problem[] = [];
  const heading = attempt(block, problems, () => readHeading(block));
  const { statements: slots, problems: faults } = readStatements(block, readSlot);
  problems.push(...faults);
  const isWhole = heading !== undefined && problems.length === 0;
  const drawing = isWhole ? { ...heading, slots } : undefined;
  return { kind: 'drawing', line: block.line, problems, drawing };
}

function readHeading(block: BlockSource): Omit<DrawingStatement, 'slots'> {
  const cursor = cursorOver(block, block.info);
  const type = readName(cursor, 'the kind of drawing, as in: drawing dial "Round the bore"');
  const { label } = readClauses(cursor, ['label']);
  const place = block.places(type.from);
  return { type, title: label ?? labelFrom(type.name), place, from: type.from, to: block.body.to };
}

function readSlot(cursor: Cursor, span: Span): DrawingSlotStatement {
  const name = readName(cursor, 'what is to be drawn');
  readEquals(cursor);
  const expression = readExpression(cursor);
  readClauses(cursor, []);
  return { name, expression, ...span };
}
