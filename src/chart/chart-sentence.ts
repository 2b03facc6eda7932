import type { ChartData } from '../sheet/chart-data.ts';
import { formatOn } from './chart-number.ts';
import { sayCourses } from './course-sentence.ts';
import { sayLevel, sayPlace, sayWindow } from './mark-sentence.ts';
import {
  joinWords,
  listWords,
  lowerFirst,
  nameInList,
  nameInSentence,
  upperFirst,
} from './words.ts';

/**
 * What a chart shows, in plain sentences made from its data: what is drawn over what, where the
 * present point lies, how the lines run, where they meet the marks and lie in the windows.
 */
export function chartSentence(data: ChartData): string {
  const parts = [
    sayWhat(data),
    sayPresent(data),
    sayCourses(data),
    ...data.marks.map((mark) => {
      if (mark.axis === 'y') return sayLevel(data, mark);
      return mark.value === data.now ? '' : sayPlace(data, mark);
    }),
    ...data.limits.map((limits) => sayWindow(data, limits)),
  ];
  return parts
    .filter((part) => part !== '')
    .map((part) => `${upperFirst(part)}.`)
    .join(' ');
}

function sayWhat({ x, y, series }: ChartData): string {
  const over = `over ${lowerFirst(x.label)} from ${formatOn(x, x.from)} to ${formatOn(x, x.to)}`;
  const names = listWords(series.map(({ label }) => nameInList(label)));
  return `${y.label}${y.label.includes(',') ? ',' : ''} ${over}${series.length > 1 ? `, a line each for ${names}` : ''}`;
}

/** A mark that stands at the present point gives it its name. */
function sayPresent({ x, y, series, marks, now }: ChartData): string {
  if (now === undefined || !Number.isFinite(now)) return '';
  const known = series.filter(({ now: height }) => Number.isFinite(height));
  if (known.length === 0) return '';
  const mark = marks.find(({ axis, value }) => axis === 'x' && value === now);
  const place = joinWords(mark?.label ?? '', `with ${lowerFirst(x.label)} at ${formatOn(x, now)}`);
  if (series.length === 1)
    return `${place}, ${nameInSentence(known[0]!.label || y.label)} is ${formatOn(y, known[0]!.now!)}`;
  const told = known.map((line) => `${nameInList(line.label)} ${formatOn(y, line.now!)}`);
  return `${place}: ${told.join(', ')}`;
}
