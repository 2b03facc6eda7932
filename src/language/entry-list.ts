import type { Dimension } from '../units/dimension.ts';
import { scanUnit } from '../units/parse-unit.ts';
import type { Unit } from '../units/unit.ts';
import { isProblem } from './entry-number.ts';
import { readNumbers } from './entry-quantity.ts';
import { cut, resolveSeries } from './entry-series.ts';
import { fail, type Problem, type Span } from './problem.ts';

/** A typed list as understood. */
export interface ListEntry {
  /** In SI. */
  readonly value: Float64Array;
  readonly dimension: Dimension;
  readonly unit: Unit | undefined;
  readonly explicit: boolean;
}

/** Reads `[2.95, 1.95]`, `[0.010, 0.015] in`, `[0.010 in, 0.015 in]`, `[2,95; 1,95]`. */
export function readList(entry: string, field: Unit | undefined): ListEntry | Problem {
  const span = findBody(entry);
  if (isProblem(span)) return span;
  const behind = readUnitBehind(entry, span.to + 1);
  if (isProblem(behind)) return behind;
  const pieces = splitList(entry, span);
  if (isProblem(pieces)) return pieces;
  const numbers = readNumbers(entry, pieces);
  if (isProblem(numbers)) return numbers;
  const allBare = numbers.every((number) => number.units.length === 0);
  if (behind !== undefined && !allBare) return refuseTwice(entry);
  const bare = allBare ? undefined : numbers.find((number) => number.units.length === 0);
  if (bare !== undefined) return refuseBare(entry, bare);
  const series = resolveSeries(entry, numbers, behind ?? field);
  if (isProblem(series)) return series;
  const { dimension, unit } = series;
  const explicit = series.explicit || behind !== undefined;
  return { value: Float64Array.from(series.values), dimension, unit, explicit };
}

/** What stands between the brackets. */
function findBody(entry: string): Span | Problem {
  const from = entry.indexOf('[');
  const to = entry.indexOf(']');
  const whole = { from: 0, to: entry.length };
  const hint = 'as in [0.010, 0.015] in';
  if (from < 0 || entry.slice(0, from).trim() !== '') {
    return refuse(`a list stands in square brackets, ${hint}`, whole);
  }
  if (to < 0) return refuse('the list lacks its closing bracket ]', whole);
  if (entry.indexOf('[', from + 1) >= 0) return refuse(`one list is enough, ${hint}`, whole);
  if (/±|\+[-/−]/.test(entry)) return refuse('the numbers of a list take no tolerance', whole);
  return { from: from + 1, to };
}

function refuse(message: string, where: Span): Problem {
  return fail('unreadable-entry', where, { message });
}

function refuseTwice(entry: string): Problem {
  const message = 'the list has units inside and one behind it; keep one of the two';
  return fail('mixed-units', { from: 0, to: entry.length }, { message });
}

/** `[0.010, 0.4 mm]` in a field of inches could mean either unit for the first. */
function refuseBare(entry: string, bare: Span): Problem {
  const found = entry.slice(bare.from, bare.to);
  const message = `${found} has no unit, but others in the list have; write one behind each, or one behind the closing bracket for all`;
  return fail('mixed-units', bare, { message });
}

function readUnitBehind(entry: string, at: number): Unit | Problem | undefined {
  const rest = entry.slice(at).trimEnd();
  const from = rest.length - rest.trimStart().length;
  if (rest.trim() === '') return undefined;
  const unit = scanUnit(rest, from, 'entry');
  if (unit !== undefined && unit.to === rest.length) return unit.unit;
  const message = `behind a list stands its unit and nothing else, not ${rest.trim().slice(0, 40)}`;
  return refuse(message, { from: at + from, to: at + rest.length });
}

/**
 * Commas part elements, unless `;` does. A comma tight between digits could be a decimal one:
 * where no point settles that, the question goes back.
 */
function splitList(entry: string, span: Span): readonly Span[] | Problem {
  const body = entry.slice(span.from, span.to);
  if (body.trim() === '') return [];
  if (body.includes(';')) return cut(entry, span, (at) => entry[at] === ';');
  const tight = /\d,\d/.test(body);
  const settled = body.includes('.') && !/(?<![\d.])\d{1,3},\d{3}(?!\d)/.test(body);
  if (tight && !settled) return refuseTight(body, span);
  return cut(entry, span, (at) => entry[at] === ',');
}

function refuseTight(body: string, span: Span): Problem {
  const found = /[\d.]*\d,\d[\d.]*/.exec(body)![0].slice(0, 40);
  const message = `is ${found} one number or two? write [2.95, 1.95] with blanks behind the commas, or [2,95; 1,95] with decimal commas`;
  return fail('ambiguous-number', span, { message });
}
