import type { ChartData, Mark, Series } from '../chart-data.ts';

/** The same chart, worked for one column of a comparison. */
export interface ChartLayer {
  readonly name: string;
  readonly data: ChartData;
}

/** What the lines of a chart are called in any of the layers; one or none needs no choice. */
export function listLines(layers: readonly ChartLayer[]): readonly string[] {
  return [...new Set(layers.flatMap(({ data }) => data.series.map(({ label }) => label)))];
}

/**
 * One chart with the lines of several laid over one another, each named by its layer. Layers whose lines
 * fall on one another share one line and its name, so that no line hides another.
 *
 * @param line of a chart with several lines the one that is compared; the last where it is left out
 */
export function overlayCharts(layers: readonly ChartLayer[], line?: string): ChartData {
  const first = layers[0]!.data;
  const wanted = line ?? listLines(layers).at(-1);
  const drawn = layers.flatMap(({ name, data }) => {
    const series = data.series.find(({ label }) => label === wanted);
    return series === undefined ? [] : [{ name, series }];
  });
  const joined = joinSeries(drawn);
  const now = first.now;
  const alike = layers.every(({ data }) => data.now === now);
  const several = listLines(layers).length > 1;
  const marks = joinMarks(layers);
  return {
    ...first,
    y: {
      ...first.y,
      label: several ? `${first.y.label}, ${wanted}` : first.y.label,
      ...extent(drawn.map(({ series }) => series)),
    },
    series: joined.map(({ names, series }) => ({
      ...series,
      // One line for all is named by its axis.
      label: joined.length === 1 ? '' : names.join(', '),
      now: alike ? series.now : undefined,
    })),
    marks: alike ? marks : [...marks, ...presentMarks(layers, marks)],
    now: alike ? now : undefined,
  };
}

interface Named {
  readonly name: string;
  readonly series: Series;
}

function joinSeries(
  drawn: readonly Named[],
): readonly { readonly names: readonly string[]; readonly series: Series }[] {
  const joined: { names: string[]; series: Series }[] = [];
  for (const { name, series } of drawn) {
    const same = joined.find((one) => isSameLine(one.series, series));
    if (same === undefined) joined.push({ names: [name], series });
    else same.names.push(name);
  }
  return joined;
}

function isSameLine(a: Series, b: Series): boolean {
  if (a.points.length !== b.points.length) return false;
  return a.points.every(([x, y], i) => {
    const [otherX, otherY] = b.points[i]!;
    return isSame(x, otherX) && isSame(y, otherY);
  });
}

function isSame(a: number, b: number): boolean {
  if (Number.isNaN(a) || Number.isNaN(b)) return Number.isNaN(a) && Number.isNaN(b);
  return Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));
}

/** A mark that stands at one place in all layers is drawn once; else each layer's own, with its name. */
function joinMarks(layers: readonly ChartLayer[]): readonly Mark[] {
  const labels = [...new Set(layers.flatMap(({ data }) => data.marks.map(keyOf)))];
  return labels.flatMap((key) => {
    const own = layers.flatMap(({ name, data }) =>
      data.marks.filter((mark) => keyOf(mark) === key).map((mark) => ({ name, mark })),
    );
    const groups = groupBy(own, ({ mark }) => mark.value);
    if (groups.length === 1) return [own[0]!.mark];
    return groups.map((group) => ({
      ...group[0]!.mark,
      label: nameMark(group[0]!.mark.label, group),
    }));
  });
}

function keyOf({ axis, label }: Mark): string {
  return `${axis} ${label}`;
}

function nameMark(label: string, group: readonly { readonly name: string }[]): string {
  const names = group.map(({ name }) => name).join(', ');
  return label === '' ? names : `${label}, ${names}`;
}

/** Where the layers stand on the axis across, unless a mark tells it already. */
function presentMarks(layers: readonly ChartLayer[], marks: readonly Mark[]): readonly Mark[] {
  const places = layers.flatMap(({ name, data }) =>
    data.now === undefined ? [] : [{ name, value: data.now }],
  );
  return groupBy(places, ({ value }) => value)
    .filter(([{ value } = { value: Number.NaN }]) =>
      marks.every((mark) => mark.axis !== 'x' || !isSame(mark.value, value)),
    )
    .map((group) => ({ axis: 'x', value: group[0]!.value, label: nameMark('', group) }));
}

function groupBy<T>(items: readonly T[], value: (item: T) => number): readonly (readonly T[])[] {
  const groups: T[][] = [];
  for (const item of items) {
    const group = groups.find(([first]) => isSame(value(first!), value(item)));
    if (group === undefined) groups.push([item]);
    else group.push(item);
  }
  return groups;
}

function extent(series: readonly Series[]): { readonly from: number; readonly to: number } {
  const ys = series.flatMap(({ points }) => points.map(([, y]) => y)).filter(Number.isFinite);
  if (ys.length === 0) return { from: 0, to: 1 };
  const [from, to] = [Math.min(...ys), Math.max(...ys)];
  // Lines that come near to nothing are judged by their height above it, as in a chart of one sheet.
  return from > 0 && from < 0.6 * to ? { from: 0, to } : { from, to };
}
