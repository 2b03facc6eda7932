import type { Cursor } from '../../language/cursor.ts';
import { readOperand, unexpected } from '../../language/parse.ts';
import { fail, type Problem } from '../../language/problem.ts';
import { readClauses } from '../clauses.ts';
import { placeProblem } from '../places.ts';
import { readNewName } from '../read-name.ts';
import type { StackBlock, StackStatement, StackTerm } from '../sheet.ts';
import { attempt, type BlockSource, cursorOver, readStatements } from './block-source.ts';
import { createDisplay, createNamed } from './named.ts';

/** A chain is worked as one formula, and no formula is longer. */
const LONGEST = 1000;

/** Reads a `stack` block: a chain of dimensions whose sum is a result. */
export function readStackBlock(block: BlockSource): StackBlock {
  const problems: Problem[] = [];
  const heading = attempt(block, problems, () => readHeading(block));
  const { statements: terms, problems: faults } = readStatements(block, readTerm);
  problems.push(...faults);
  if (terms.length === 0 && faults.length === 0) {
    const details = { kind: 'stack', example: '+ finger_reading' };
    problems.push(placeProblem(fail('missing-line', block.info, details), block.places));
  }
  if (terms.length > LONGEST) {
    const problem = fail('too-long', terms[LONGEST]!, { limit: LONGEST });
    problems.push(placeProblem(problem, block.places));
  }
  const isWhole = heading !== undefined && problems.length === 0;
  return {
    kind: 'stack',
    line: block.line,
    problems,
    stack: isWhole ? { ...heading, terms } : undefined,
  };
}

function readHeading(block: BlockSource): Omit<StackStatement, 'terms'> {
  const cursor = cursorOver(block, block.info);
  const name = readNewName(cursor, 'the name of the sum, as in: stack gap "Gap" as in to 0.001');
  const clauses = readClauses(cursor, ['label', 'as', 'to', 'source']);
  return { ...createNamed(block, name, block.body.to, clauses), display: createDisplay(clauses) };
}

function readTerm(cursor: Cursor): StackTerm {
  const sign = cursor.peek();
  if (sign.type !== 'symbol' || (sign.text !== '+' && sign.text !== '-')) {
    throw unexpected(sign, '"+" or "-" at the start of the line');
  }
  cursor.take();
  const expression = readOperand(cursor);
  const { label } = readClauses(cursor, ['label']);
  return {
    sign: sign.text === '+' ? 1 : -1,
    expression,
    from: sign.from,
    to: expression.to,
    ...(label === undefined ? {} : { label }),
  };
}
