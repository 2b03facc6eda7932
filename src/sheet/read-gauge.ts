import type { GaugeData, GaugeValue, Limit } from '../drawing/gauge-data.ts';
import type { Kind } from '../language/kind.ts';
import type { Cell, Check, Formula } from './cell.ts';
import { elementNames } from './element-names.ts';
import { showValue } from './show.ts';
import type { Spread } from './spread/spread.ts';
import type { Standing } from './standing.ts';

type Values = Omit<Standing, 'isEntered'>;

/** A check as it is drawn: its window, and the values on it with their ranges. */
export function readGauge(check: Check, subject: Cell, values: Values): GaugeData {
  const show = showAs(subject, values);
  return {
    title: check.statement.label,
    least: readLimit(check.least, show, values),
    most: readLimit(check.most, show, values),
    values: readValues(subject, show, values),
    below: check.statement.below,
    above: check.statement.above,
  };
}

export type Show = (value: number) => string;

/** One number in the unit and to the digit of a cell. */
export function showAs({ kind, display }: Cell, { system }: Pick<Standing, 'system'>): Show {
  const dimension = kind?.type === 'quantity' || kind?.type === 'list' ? kind.dimension : undefined;
  if (dimension === undefined) return String;
  const single: Kind = { type: 'quantity', dimension };
  return (value) => showValue(value, single, display, system()).text;
}

function readLimit(
  formula: Formula | undefined,
  show: Show,
  { workOut }: Values,
): Limit | undefined {
  if (formula === undefined) return undefined;
  const value = workOut(formula) as number;
  return Number.isFinite(value) ? { value, text: show(value) } : undefined;
}

function readValues(subject: Cell, show: Show, standing: Values): readonly GaugeValue[] {
  const outcome = standing.outcomeOf(subject.index);
  if (outcome.state !== 'value') return [{ value: Number.NaN, text: '?' }];
  const { value } = outcome;
  const spreads = standing.spreadOf(subject.index).map(rangesOf);
  if (typeof value === 'number') return [{ value, text: show(value), spread: spreads[0] }];
  if (!(value instanceof Float64Array)) return [];
  const names = elementNames(standing.book, standing.frame(), subject);
  return [...value].map((one, i) => ({
    label: names?.[i] ?? String(i + 1),
    value: one,
    text: show(one),
    spread: spreads[i],
  }));
}

/** On the gauge: a thick bar for the likely range, a thin one for the worst case. */
function rangesOf({ likely, worst, straight }: Spread): GaugeValue['spread'] {
  const worstCase = [worst.from, worst.to] as const;
  return straight ? { worst: worstCase, likely: [likely.from, likely.to] } : { worst: worstCase };
}
