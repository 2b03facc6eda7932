import type { Axis } from '../sheet/chart-data.ts';
import type { FigureTable } from '../sheet/figure-table.ts';

/** A table as CSV (RFC 4180), its head first. */
export function formatCSV(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => `${row.map(writeCell).join(',')}\r\n`).join('');
}

export function tableCSV({ columns, rows }: FigureTable): string {
  const head = columns.map(({ title }) => title);
  const plain = rows.map((row) =>
    row.map((text, i) => (columns[i]!.numeric ? plainNumber(text) : text)),
  );
  return formatCSV([head, ...plain]);
}

/** The head of a column that holds the values of an axis. */
export function axisHead({ label, unit }: Pick<Axis, 'label' | 'unit'>): string {
  return unit === '' ? label : `${label} (${unit})`;
}

/** In full precision; a gap is an empty cell. */
export function formatNumber(value: number): string {
  return Number.isFinite(value) ? String(value) : '';
}

const NUMBER = /^-?\d+(?:\.\d+)?(?:e[+-]?\d+)?$/i;

/** A number as programs read it: hyphen for minus, no thin blanks. Anything else stays as it is. */
export function plainNumber(text: string): string {
  const plain = text.replaceAll('−', '-').replaceAll(/[\u00a0\u202f\u2009]/g, '');
  return NUMBER.test(plain) ? plain : text;
}

/**
 * One cell. A text that a spreadsheet would work as a formula gets an apostrophe in front; numbers
 * are left alone, negative ones too.
 */
export function writeCell(text: string): string {
  const harmless = /^\s*[=+\-@\t\r]/.test(text) && !NUMBER.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}
