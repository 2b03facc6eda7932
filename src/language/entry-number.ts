import { quote, wordAt } from '../units/characters.ts';
import { type Dimension, isNone } from '../units/dimension.ts';
import { unknownUnit } from '../units/nearest-units.ts';
import { parseUnit, scanUnit } from '../units/parse-unit.ts';
import type { Unit } from '../units/unit.ts';
import { type Checked, checkExpression } from './check.ts';
import { compileExpression } from './compile.ts';
import { explain } from './explain.ts';
import { createMemory } from './memory.ts';
import { parseExpression } from './parse.ts';
import { fail, type Problem, type Span } from './problem.ts';
import type { Expression } from './tree.ts';
import { partsOf } from './walk.ts';

/** A number of an entry, worked out: its span counts in the whole entry. */
export interface EntryNumber extends Span {
  /** In SI, or as typed where no unit was. */
  readonly value: number;
  readonly dimension: Dimension;
  /** Each unit that was typed, once. Empty for a bare number, which takes a unit from elsewhere. */
  readonly units: readonly Unit[];
}

export function isProblem(found: object | undefined): found is Problem {
  return found !== undefined && 'code' in found && 'message' in found;
}

/**
 * Works out the part of an entry between two offsets: arithmetic on numbers with units. A bracket
 * around the whole may have the unit behind it: `(3.212 - 0.250) in`.
 */
export function readNumber(entry: string, { from, to }: Span): EntryNumber | Problem {
  const text = entry.slice(from, to);
  const found = readOuterUnit(text) ?? workOut(text);
  if (isProblem(found)) return { ...found, from: found.from + from, to: found.to + from };
  const trimmed = text.trim();
  const start = from + text.indexOf(trimmed);
  return { ...found, from: start, to: start + trimmed.length };
}

type Worked = Omit<EntryNumber, 'from' | 'to'>;

const NOTHING = { functions: new Map(), lookUp: () => undefined, names: () => [] };

function workOut(text: string): Worked | Problem {
  const tree = parseExpression(text, 'entry');
  if (isProblem(tree)) return refineFault(tree, text);
  const checked = checkExpression(tree, NOTHING, text);
  const kind = checked.kind;
  if (kind === undefined) return findBareSide(tree, checked, text) ?? checked.problems[0]!;
  if (kind.type !== 'quantity') return refuseKind(kind.type, tree);
  const context = { functions: NOTHING.functions, kinds: checked.kinds, slotOf: () => -1 };
  const memory = createMemory(0);
  const value = compileExpression(tree, context).run(memory) as number;
  if (Number.isNaN(value)) {
    return explain(tree, { ...context, memory, source: text, whyNot: () => '' });
  }
  return { value, dimension: kind.dimension, units: unitsIn(tree) };
}

/** `( … ) unit` where the bracket holds everything before the unit. */
function readOuterUnit(text: string): Worked | Problem | undefined {
  const close = text.lastIndexOf(')');
  const rest = text.slice(close + 1).trim();
  const unit = rest === '' ? undefined : scanUnit(rest, 0, 'entry');
  const head = text.slice(0, close + 1);
  if (close < 0 || unit === undefined || unit.to < rest.length || !isBracketed(head.trim())) {
    return undefined;
  }
  const inside = workOut(head);
  if (isProblem(inside)) return inside;
  if (inside.units.length > 0 || !isNone(inside.dimension)) {
    const message = `${quote(text.trim())} has units in the bracket and one behind it; keep one of the two`;
    return fail('mixed-units', { from: 0, to: text.length }, { message });
  }
  const { factor, dimension } = unit.unit;
  return { value: inside.value * factor, dimension, units: [unit.unit] };
}

/** True where the first bracket closes at the very end. */
function isBracketed(text: string): boolean {
  let depth = 0;
  for (let i = 0; i < text.length; i += 1) {
    if (text[i] === '(') depth += 1;
    if (text[i] === ')') depth -= 1;
    if (depth === 0) return i > 0 && i === text.length - 1;
  }
  return false;
}

function unitsIn(tree: Expression): readonly Unit[] {
  const found = new Map<string, Unit>();
  const visit = (node: Expression): void => {
    if (node.type === 'quantity' && node.unit !== '') found.set(node.unit, parseUnit(node.unit)!);
    partsOf(node).forEach(visit);
  };
  visit(tree);
  return [...found.values()];
}

/** A list or a comparison where a number belongs. */
export function refuseKind(type: string, tree: Span): Problem {
  const found = type === 'list' ? 'a list' : 'a comparison';
  return fail('unreadable-entry', tree, { message: `one number belongs here, not ${found}` });
}

/** The parser expects a formula; a person who typed an entry is helped by a nearer word. */
function refineFault(problem: Problem, text: string): Problem {
  const word = wordAt(text, problem.from);
  const isLoneUnit = problem.code === 'name-in-entry' && parseUnit(word) !== undefined;
  if (word !== '' && (isLoneUnit || problem.code === 'unexpected-word'))
    return refineWord(problem, word);
  if (problem.code === 'unexpected-word' && text[problem.from] === ',') {
    const message =
      'a comma stands between two numbers here; part readings with ; or with a comma and a blank, and write decimals with a point';
    return fail('unreadable-entry', problem, { message });
  }
  if (problem.code !== 'unreadable-character') return problem;
  const found = text.slice(problem.from, problem.to);
  const message = `cannot read ${found} here; an entry holds numbers, units and + - * / ^ ( )`;
  return fail('unreadable-entry', problem, { message });
}

function refineWord(problem: Problem, word: string): Problem {
  const message =
    parseUnit(word) === undefined
      ? unknownUnit(word)
      : `${word} does not stand behind a number: a unit follows its number and holds no blank, as in 3 in or 12 lbf·ft`;
  return fail('unknown-unit', { from: problem.from, to: problem.from + word.length }, { message });
}

/** `3 in + 2`: the commonest slip gets a sentence of its own. */
function findBareSide(tree: Expression, checked: Checked, text: string): Problem | undefined {
  for (const part of partsOf(tree)) {
    const deeper = findBareSide(part, checked, text);
    if (deeper !== undefined) return deeper;
  }
  if (tree.type !== 'binary' || !['+', '-'].includes(tree.operator)) return undefined;
  const [left, right] = [tree.left, tree.right].map((side) => isBare(side, checked));
  if (left === undefined || right === undefined || left === right) return undefined;
  const [bare, other] = left ? [tree.left, tree.right] : [tree.right, tree.left];
  const quoted = [bare, other].map((side) => quote(text.slice(side.from, side.to)));
  const message = `${quoted[0]} has no unit, but ${quoted[1]} has one; write a unit behind both`;
  return fail('mixed-units', bare, { message });
}

function isBare(side: Expression, checked: Checked): boolean | undefined {
  const kind = checked.kinds.get(side);
  return kind?.type === 'quantity' ? isNone(kind.dimension) : undefined;
}
