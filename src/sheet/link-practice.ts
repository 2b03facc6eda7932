import { type Kind, nameKind } from '../language/kind.ts';
import type { Span } from '../language/problem.ts';
import type { Expression } from '../language/tree.ts';
import { unifyKinds } from '../language/unify.ts';
import type { Cell, Formula, LinkedPractice, LinkedVary, Practice } from './cell.ts';
import { constantValue } from './constant-value.ts';
import { displayStep } from './display-step.ts';
import { findCell, findGiven, type SoundCell } from './find-cell.ts';
import { attemptLink, LinkFault, linkFault } from './link-fault.ts';
import { type LinkContext, linkFormula } from './link-formula.ts';
import { rangeFault, type WrittenRange } from './range-fault.ts';
import type { PracticeStatement, PracticeVary, Sheet } from './sheet.ts';
import { upstreamOf } from './upstream.ts';

/** Links a practice question: what is asked, what varies, what the usual mistakes lead to. */
export function linkPractice(
  statement: PracticeStatement,
  sheet: Sheet,
  context: LinkContext,
): Practice {
  const base = { sheet: sheet.name, statement };
  return { ...base, ...attemptLink(sheet, () => createLinked(statement, sheet, context)) };
}

function createLinked(
  statement: PracticeStatement,
  sheet: Sheet,
  context: LinkContext,
): LinkedPractice {
  const asked = findCell(statement.ask, sheet, context);
  const { kind } = asked;
  if (kind.type !== 'quantity')
    throw misfit(statement.ask, 'a practice question', 'a result that is one quantity', kind);
  const vary =
    statement.vary.length === 0
      ? ranged(asked, context)
      : statement.vary.map((line) => linkVary(line, sheet, context));
  if (vary.length === 0) {
    throw linkFault('nothing-varies', statement.ask, { name: asked.name });
  }
  return {
    asked: asked.index,
    within: linkAnswer(statement.within, kind, '"within"', sheet, context),
    vary,
    mistakes: statement.mistakes.map(({ expression, sentence }) => ({
      formula: linkAnswer(expression, kind, 'a mistake', sheet, context),
      sentence,
    })),
  };
}

function misfit(node: Span, where: string, expected: string, kind: Kind): LinkFault {
  return linkFault('wrong-kind', node, { where, expected, found: nameKind(kind) });
}

function linkAnswer(
  tree: Expression,
  kind: Kind,
  where: string,
  sheet: Sheet,
  context: LinkContext,
): Formula {
  const linked = linkFormula(tree, sheet, '', context);
  if ('problems' in linked) throw new LinkFault(linked.problems[0]!);
  if (unifyKinds(kind, linked.formula.kind) !== undefined) return linked.formula;
  throw misfit(tree, where, nameKind(kind), linked.formula.kind);
}

/** Without `vary` all givens with a range that the answer hangs on. */
function ranged(asked: Cell, { cells }: LinkContext): readonly LinkedVary[] {
  return [...upstreamOf(cells, [asked.index])]
    .sort((a, b) => a - b)
    .flatMap((index) => {
      const cell = cells[index]!;
      return cell.role === 'given' && cell.range !== undefined
        ? [{ given: index, ...cell.range, ...stepOf(cell) }]
        : [];
    });
}

function stepOf({ display }: Cell, resolution?: number): { readonly step?: number } {
  const step = displayStep(resolution === undefined ? display : { ...display, resolution });
  return step === undefined ? {} : { step };
}

function linkVary(
  { name, range, resolution }: PracticeVary,
  sheet: Sheet,
  context: LinkContext,
): LinkedVary {
  const cell = findGiven(name, '"vary" gives fresh numbers to', sheet, context);
  if (cell.kind.type !== 'quantity')
    throw misfit(name, '"vary"', 'a given that is one quantity', cell.kind);
  const ends = range === undefined ? cell.range : bounds(range, cell, sheet, context);
  if (ends === undefined) throw linkFault('missing-range', name, { name: name.name });
  return { given: cell.index, ...ends, ...stepOf(cell, resolution) };
}

function bounds(
  range: WrittenRange,
  { kind }: SoundCell,
  sheet: Sheet,
  { functions }: LinkContext,
): { readonly from: number; readonly to: number } {
  const [from, to] = [range.from, range.to].map((tree) => {
    const constant = constantValue(tree, functions, sheet.source);
    if ('code' in constant) throw new LinkFault(constant);
    if (unifyKinds(kind, constant.kind) === undefined)
      throw misfit(tree, 'the range', nameKind(kind), constant.kind);
    return constant.value as number;
  });
  const fault = rangeFault(range, functions, sheet.source);
  if (fault !== undefined) throw new LinkFault(fault);
  return { from: from!, to: to! };
}
