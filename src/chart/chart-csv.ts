import type { Axis, ChartData } from '../sheet/chart-data.ts';

/**
 * A chart's points as CSV (RFC 4180): a head with units, a column for x and one for each line, a row
 * for each point in full precision. A gap is an empty cell; a jump is two rows with one x.
 */
export function chartCSV(data: ChartData): string {
  const header = [
    writeHead(data.x.label, data.x.unit),
    ...data.series.map(({ label }) => writeHead(label || data.y.label, data.y.unit)),
  ];
  const rows = mergePoints(data).map((row) => row.map(writeNumber));
  return [header.map(writeText), ...rows].map((row) => `${row.join(',')}\r\n`).join('');
}

function writeHead(label: Axis['label'], unit: Axis['unit']): string {
  return unit === '' ? label : `${label} (${unit})`;
}

function writeNumber(value: number): string {
  return Number.isFinite(value) ? String(value) : '';
}

/** Text that a spreadsheet would work as a formula gets an apostrophe; then quotes where needed. */
function writeText(text: string): string {
  const harmless = /^[\s]*[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}

/** Lines side by side: each x once, or as often as the line that has it most often. */
function mergePoints({ series }: ChartData): readonly (readonly number[])[] {
  const rows = new Map<number, number[][]>();
  series.forEach(({ points }, column) => {
    const seen = new Map<number, number>();
    for (const [x, y] of points) {
      const turn = seen.get(x) ?? 0;
      seen.set(x, turn + 1);
      rowFor(rows, x, turn, series.length)[column] = y;
    }
  });
  return [...rows]
    .sort(([a], [b]) => a - b)
    .flatMap(([x, turns]) => turns.map((row) => [x, ...row]));
}

/** Mutates `rows` where the row is new. */
function rowFor(rows: Map<number, number[][]>, x: number, turn: number, width: number): number[] {
  const turns = rows.get(x) ?? [];
  rows.set(x, turns);
  turns[turn] ??= new Array<number>(width).fill(Number.NaN);
  return turns[turn];
}
