import { lexer, type Token, type Tokens } from 'marked';
import { fail, type Problem } from '../../language/problem.ts';
import { readClauses } from '../clauses.ts';
import { placeProblem } from '../places.ts';
import type { Step, StepsBlock } from '../sheet.ts';
import { attempt, type BlockSource, cursorOver } from './block-source.ts';

/** Reads a `steps` block: a checklist, one list item a step. */
export function readStepsBlock(block: BlockSource): StepsBlock {
  const problems: Problem[] = [];
  const clauses = attempt(block, problems, () =>
    readClauses(cursorOver(block, block.info), ['label']),
  );
  const tokens = lexer(block.source.slice(block.body.from, block.body.to));
  const items = tokens.flatMap((token) =>
    token.type === 'list' ? (token as Tokens.List).items : [],
  );
  if (items.length === 0) {
    const details = { kind: 'steps', example: '- Wind the collar fully in' };
    problems.push(placeProblem(fail('missing-line', block.info, details), block.places));
  }
  return {
    kind: 'steps',
    line: block.line,
    problems,
    title: clauses?.label ?? 'Steps',
    steps: identify(items.map((item) => ({ tokens: inlineTokens(item.tokens), text: item.text }))),
  };
}

/** The inline tokens of the paragraphs of an item. */
function inlineTokens(tokens: readonly Token[]): readonly Token[] {
  return tokens.flatMap((token) =>
    'tokens' in token && token.tokens !== undefined ? token.tokens : [token],
  );
}

/** Gives each step an id made from its words; where that is taken already, with a number behind it. */
function identify(steps: readonly Omit<Step, 'id'>[]): readonly Step[] {
  const taken = new Set<string>();
  return steps.map((step) => {
    const words = step.text
      .toLowerCase()
      .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
      .replaceAll(/^-|-$/g, '');
    let id = words;
    for (let times = 2; taken.has(id); times += 1) id = `${words}-${times}`;
    taken.add(id);
    return { ...step, id };
  });
}
