import { inferEntry, readEntry } from '../../language/entry.ts';
import type { Kind } from '../../language/kind.ts';
import { equalDimensions, isNone, nameDimension } from '../../units/dimension.ts';
import { formatUnit } from '../../units/format-unit.ts';
import type { Unit } from '../../units/unit.ts';
import type { LinkedPractice } from '../cell.ts';
import type { PracticeProblem } from './draw-problem.ts';

/** What an apprentice's answer tells. */
export interface Feedback {
  /**
   * `unit`: the right number with the wrong unit or none; `rounding`: right but for too coarse a
   * figure; `sign`: right but for its sign; `mistake`: one of the sheet's usual mistakes.
   */
  readonly type: 'right' | 'unit' | 'rounding' | 'sign' | 'mistake' | 'wrong' | 'unreadable';
  readonly sentence: string;
  /** Which of the sheet's mistakes, from 0. */
  readonly mistake?: number;
}

/** So many times further off than allowed still looks like a figure rounded on the way. */
const COARSE = 10;

/**
 * Judges a typed answer.
 *
 * @param unit the unit that the sheet shows the answer in; undefined for a plain number
 */
export function judgeAnswer(
  text: string,
  problem: PracticeProblem,
  practice: LinkedPractice,
  kind: Kind,
  unit: Unit | undefined,
): Feedback {
  const typed = inferEntry(text);
  if (typed === undefined) return { type: 'unreadable', sentence: 'Type an answer first.' };
  if ('code' in typed) return { type: 'unreadable', sentence: sentenceOf(typed.message) };
  const dimension = kind.type === 'quantity' ? kind.dimension : undefined;
  const found = typed.kind.type === 'quantity' ? typed.kind.dimension : undefined;
  if (dimension === undefined || found === undefined) {
    return { type: 'unreadable', sentence: 'One number belongs here.' };
  }
  if (!equalDimensions(dimension, found)) return judgeUnit(text, problem, found, unit);
  const reading = readEntry(text, { kind, ...(unit === undefined ? {} : { unit }) });
  if (reading.state !== 'value') return { type: 'unreadable', sentence: 'That cannot be read.' };
  return judgeNumber(reading.value as number, problem, practice, typed.unit, unit);
}

function sentenceOf(message: string): string {
  return `${message.charAt(0).toUpperCase()}${message.slice(1)}.`;
}

/** Another dimension, or none: is at least the number right? */
function judgeUnit(
  text: string,
  problem: PracticeProblem,
  found: Parameters<typeof nameDimension>[0],
  unit: Unit | undefined,
): Feedback {
  const cure =
    unit === undefined ? 'write it without one' : `write "${formatUnit(unit)}" behind the number`;
  const reading = readEntry(text, { kind: { type: 'quantity', dimension: found } });
  const inferred = inferEntry(text);
  const typedUnit = inferred !== undefined && !('code' in inferred) ? inferred.unit : undefined;
  const number =
    reading.state === 'value' ? (reading.value as number) / (typedUnit?.factor ?? 1) : Number.NaN;
  const factor = unit?.factor ?? 1;
  if (Math.abs(number - problem.answer / factor) > problem.within / factor) {
    return {
      type: 'wrong',
      sentence: `Not so, and ${isNone(found) ? 'the unit is missing' : `${nameDimension(found)} is the wrong kind of unit`}: ${cure}.`,
    };
  }
  const fault = isNone(found)
    ? 'without its unit'
    : `but ${nameDimension(found)} is the wrong kind of unit`;
  return { type: 'unit', sentence: `The number is right, ${fault}: ${cure}.` };
}

function judgeNumber(
  value: number,
  problem: PracticeProblem,
  practice: LinkedPractice,
  typed: Unit | undefined,
  unit: Unit | undefined,
): Feedback {
  const { answer, within, mistakes } = problem;
  const near = (other: number, reach = within) => Math.abs(value - other) <= reach * (1 + 1e-9);
  if (near(answer)) return { type: 'right', sentence: 'Right.' };
  const mistake = mistakes.findIndex((wrong) => near(wrong));
  if (mistake >= 0)
    return { type: 'mistake', mistake, sentence: practice.mistakes[mistake]!.sentence };
  if (near(-answer))
    return {
      type: 'sign',
      sentence: 'The size is right, the sign is not: think which way it goes.',
    };
  if (
    typed !== undefined &&
    unit !== undefined &&
    typed.symbol !== unit.symbol &&
    near((answer / unit.factor) * typed.factor, (within / unit.factor) * typed.factor)
  ) {
    return {
      type: 'unit',
      sentence: `The number is right, but "${formatUnit(typed)}" stands behind it: write "${formatUnit(unit)}".`,
    };
  }
  if (near(answer, COARSE * within))
    return {
      type: 'rounding',
      sentence: 'Nearly: a figure was rounded too early. Carry more digits to the end.',
    };
  return {
    type: 'wrong',
    sentence: 'Not so. Look at the formula, put the numbers in one by one, and try again.',
  };
}
