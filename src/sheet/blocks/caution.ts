import { lexer, type Token } from 'marked';
import { fail, type Problem } from '../../language/problem.ts';
import { readClauses } from '../clauses.ts';
import { placeProblem } from '../places.ts';
import type { CautionBlock } from '../sheet.ts';
import { attempt, type BlockSource, cursorOver } from './block-source.ts';

/** Reads a `caution` block: a safety note. */
export function readCautionBlock(block: BlockSource): CautionBlock {
  const problems: Problem[] = [];
  const clauses = attempt(block, problems, () =>
    readClauses(cursorOver(block, block.info), ['label']),
  );
  const tokens: readonly Token[] = lexer(block.source.slice(block.body.from, block.body.to));
  if (tokens.every((token) => token.type === 'space')) {
    const details = { kind: 'caution', example: 'Never work under a car on one jack' };
    problems.push(placeProblem(fail('missing-line', block.info, details), block.places));
  }
  return {
    kind: 'caution',
    line: block.line,
    problems,
    title: clauses?.label ?? 'Caution',
    tokens,
  };
}
