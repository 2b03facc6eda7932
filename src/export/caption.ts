import { formatOn } from '../chart/chart-number.ts';
import { lowerFirst } from '../chart/words.ts';
import { type GaugeData, isKnown, sideOf } from '../drawing/gauge-data.ts';
import type { ChartData } from '../sheet/chart-data.ts';

/** What stands under a printed chart: where the job's own point lies, in a sentence. */
export function chartCaption(data: ChartData): string {
  const { x, y, series, now } = data;
  const known = series.filter((one) => one.now !== undefined && Number.isFinite(one.now));
  if (now === undefined || known.length === 0) return `${data.title}.`;
  const place = `With ${lowerFirst(x.label)} at ${formatOn(x, now)}`;
  const value = `${lowerFirst(y.label)} is ${formatOn(y, known.at(-1)!.now!)}`;
  if (series.length === 1) return `${data.title}. ${place}, ${value}.`;
  const last = known.at(-1)!;
  return `${data.title}. ${place}, ${value} for ${last.label}${compare(data, known)}.`;
}

/** The last line against the one before it: how much more or less. */
function compare({ y }: ChartData, known: ChartData['series']): string {
  const [before, last] = known.slice(-2);
  if (before === undefined || last === undefined) return '';
  const difference = last.now! - before.now!;
  const shown = formatOn(y, Math.abs(difference));
  if (Number.parseFloat(shown) === 0) return `, the same as for ${before.label}`;
  return `, ${shown} ${difference < 0 ? 'less' : 'more'} than for ${before.label}`;
}

/** What stands under a printed gauge: the value that is nearest to a limit or past it, and the window. */
export function gaugeCaption(data: GaugeData, worst: number): string {
  const value = data.values[worst] ?? data.values[0];
  if (value === undefined || !isKnown(value)) return `${data.title}: not known yet.`;
  const name = data.values.length > 1 && value.label !== undefined ? `, ${value.label}` : '';
  const side = sideOf(data, value.value);
  const place = side === undefined ? 'inside' : side;
  return `${data.title}${name}: ${value.text}, ${place} the window${nameWindow(data)}.`;
}

function nameWindow({ least, most }: GaugeData): string {
  if (least !== undefined && most !== undefined) return ` of ${least.text} to ${most.text}`;
  if (least !== undefined) return ` of at least ${least.text}`;
  return most === undefined ? '' : ` of at most ${most.text}`;
}
