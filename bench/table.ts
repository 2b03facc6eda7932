/** One line of the table: what was compared, the two sides, and how they stand to the bar. */
export interface Row {
  readonly what: string;
  readonly ours: string;
  readonly theirs: string;
  readonly ratio: string;
  readonly bar: string;
  readonly met: boolean | undefined;
}

const HEAD: Row = {
  what: 'what',
  ours: 'Layshaft',
  theirs: 'beside it',
  ratio: 'ratio',
  bar: 'bar',
  met: undefined,
};

/** A ratio that must not be larger than the bar. */
export function atMost(what: string, ours: number, theirs: number, bar: number): Row {
  const ratio = ours / theirs;
  return compare(what, ours, theirs, ratio, `≤ ${bar} ×`, ratio <= bar);
}

/** How many times faster than the other side; must not be less than the bar. */
export function fasterBy(what: string, ours: number, theirs: number, bar: number): Row {
  const ratio = theirs / ours;
  return compare(what, ours, theirs, ratio, `≥ ${bar} ×`, ratio >= bar);
}

function compare(
  what: string,
  ours: number,
  theirs: number,
  ratio: number,
  bar: string,
  met: boolean,
): Row {
  const sides = { ours: formatTime(ours), theirs: formatTime(theirs) };
  return { what, ...sides, ratio: `${ratio.toFixed(2)} ×`, bar, met };
}

/** A time beside which nothing stands. */
export function alone(what: string, ours: number): Row {
  return { what, ours: formatTime(ours), theirs: '', ratio: '', bar: '', met: undefined };
}

/** An exponent of growth that must not be larger than the bar. */
export function growth(what: string, exponent: number, bar: number): Row {
  return {
    what,
    ours: '',
    theirs: '',
    ratio: exponent.toFixed(2),
    bar: `≤ ${bar}`,
    met: exponent <= bar,
  };
}

/** Milliseconds in the unit that leaves a number people can read. */
export function formatTime(milliseconds: number): string {
  if (milliseconds < 1e-3) return `${(milliseconds * 1e6).toFixed(0)} ns`;
  if (milliseconds < 1) return `${(milliseconds * 1e3).toFixed(2)} µs`;
  return `${milliseconds.toFixed(2)} ms`;
}

/** The rows as text in columns. */
export function formatTable(rows: readonly Row[]): string {
  const cells = [HEAD, ...rows].map(listCells);
  const widths = cells[0]!.map((_, i) => Math.max(...cells.map((row) => row[i]!.length)));
  return cells.map((row) => formatRow(row, widths)).join('\n');
}

function listCells({ what, ours, theirs, ratio, bar, met }: Row): readonly string[] {
  return [what, ours, theirs, ratio, bar, met === undefined ? '' : met ? 'met' : 'MISSED'];
}

/** The first column is text and stands left, numbers stand right. */
function formatRow(row: readonly string[], widths: readonly number[]): string {
  const [first, ...others] = row;
  const right = others.map((cell, i) => cell.padStart(widths[i + 1]!));
  return [first!.padEnd(widths[0]!), ...right].join('  ').trimEnd();
}
