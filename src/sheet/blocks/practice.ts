import type { Cursor } from '../../language/cursor.ts';
import { fault, readOperand, unexpected } from '../../language/parse.ts';
import { fail, type Problem, type Span } from '../../language/problem.ts';
import { readClauses } from '../clauses.ts';
import { placeProblem } from '../places.ts';
import { readName } from '../read-name.ts';
import type { PracticeBlock, PracticeMistake, PracticeStatement, PracticeVary } from '../sheet.ts';
import { attempt, type BlockSource, cursorOver, readStatements } from './block-source.ts';

type Ask = Pick<PracticeStatement, 'ask' | 'question' | 'within'>;

type Line =
  | { readonly type: 'ask'; readonly ask: Ask }
  | { readonly type: 'vary'; readonly vary: PracticeVary }
  | { readonly type: 'mistake'; readonly mistake: PracticeMistake };

/** Reads a `practice` block: a question with fresh numbers and the usual mistakes. */
export function readPracticeBlock(block: BlockSource): PracticeBlock {
  const problems: Problem[] = [];
  const title = attempt(block, problems, () => readTitle(block));
  const { statements, problems: faults } = readStatements(block, readLine);
  problems.push(...faults);
  const asks = statements.flatMap((line) => (line.type === 'ask' ? [line.ask] : []));
  if (asks.length !== 1 && problems.length === 0) problems.push(wrongAsks(block, asks));
  const isWhole = title !== undefined && problems.length === 0;
  const practice = isWhole ? createPractice(block, title, asks[0]!, statements) : undefined;
  return { kind: 'practice', line: block.line, problems, practice };
}

function wrongAsks(block: BlockSource, [, second]: readonly Ask[]): Problem {
  const details = { kind: 'practice', example: 'ask gap within 0.001 in "How wide is the gap?"' };
  const problem =
    second === undefined
      ? fail('missing-line', block.info, details)
      : fail('repeated-clause', second.ask, { clause: `ask ${second.ask.name}` });
  return placeProblem(problem, block.places);
}

function createPractice(
  block: BlockSource,
  title: string,
  ask: Ask,
  lines: readonly Line[],
): PracticeStatement {
  return {
    title,
    place: block.places(block.info.from),
    from: block.info.from,
    to: block.body.to,
    ...ask,
    vary: lines.flatMap((line) => (line.type === 'vary' ? [line.vary] : [])),
    mistakes: lines.flatMap((line) => (line.type === 'mistake' ? [line.mistake] : [])),
  };
}

function readTitle(block: BlockSource): string {
  const { label } = readClauses(cursorOver(block, block.info), ['label']);
  if (label !== undefined) return label;
  throw fault('missing-name', block.info, { kind: 'practice', example: 'practice "The gap"' });
}

function readLine(cursor: Cursor, span: Span): Line {
  const word = cursor.peek();
  const first = word.type === 'word' ? word.text : '';
  if (first === 'ask') return { type: 'ask', ask: readAsk(cursor) };
  if (first === 'vary') return { type: 'vary', vary: readVary(cursor, span) };
  if (first === 'mistake') return { type: 'mistake', mistake: readMistake(cursor, span) };
  throw unexpected(word, '"ask", "vary" or "mistake"');
}

function readAsk(cursor: Cursor): Ask {
  cursor.take();
  const ask = readName(cursor, 'the name of a result');
  const { label, within } = readClauses(cursor, ['label', 'within']);
  if (within === undefined)
    throw unexpected(cursor.peek(), '"within" and how far off is still right');
  if (label === undefined) throw unexpected(cursor.peek(), 'the question, in quotation marks');
  return { ask, within, question: label };
}

function readVary(cursor: Cursor, span: Span): PracticeVary {
  cursor.take();
  const name = readName(cursor, 'the name of a given');
  const {
    range,
    fraction,
    resolution = fraction && 1 / fraction,
  } = readClauses(cursor, ['from', 'to']);
  return {
    ...span,
    name,
    ...(range === undefined ? {} : { range }),
    ...(resolution === undefined ? {} : { resolution }),
  };
}

function readMistake(cursor: Cursor, span: Span): PracticeMistake {
  cursor.take();
  const expression = readOperand(cursor);
  const { label } = readClauses(cursor, ['label']);
  if (label === undefined) throw unexpected(cursor.peek(), 'what it tells, in quotation marks');
  return { ...span, expression, sentence: label };
}
