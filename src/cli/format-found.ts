import type { Sheet } from '../sheet/sheet.ts';
import type { FindRecord } from './find-record.ts';
import { formatProblem } from './problem-record.ts';

/** Rows that people want to read. */
const MOST = 12;

/** The answer to a question as lines for people. */
export function formatFound({ title }: Sheet, record: FindRecord): string {
  const rows = record.stocked.slice(0, MOST);
  const width = Math.max(0, ...rows.map(({ name }) => name.length));
  const stocked = rows.map(({ name, text }) => `  ${name.padEnd(width)}  gives ${text}`);
  const more = record.stocked.length - rows.length;
  const sections = [
    [title],
    [record.sentence],
    stocked.length === 0 ? [] : ['To be had, the nearest first', ...stocked],
    more > 0 ? [`  and ${more} more`] : [],
    record.problems.length === 0
      ? []
      : ['Problems', ...record.problems.map((p) => `  ${formatProblem(p)}`)],
  ];
  return `${sections
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join('\n'))
    .join('\n\n')}\n`;
}
