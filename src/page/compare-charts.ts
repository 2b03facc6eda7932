import type { ChartData } from '../sheet/chart-data.ts';
import { type ChartLayer, listLines, overlayCharts } from '../sheet/compare/overlay-charts.ts';
import type { ChartStatement, Sheet } from '../sheet/sheet.ts';
import { sweepChart } from '../sheet/sweep.ts';
import type { Desk } from './desk.ts';
import { createDrawn, LEAST_WIDTH } from './drawn.ts';
import { fill, h } from './element.ts';
import { loadChart } from './load-drawings.ts';
import { createNumberFold } from './number-fold.ts';
import type { ShownColumn } from './shown-column.ts';

type ChartTool = Awaited<ReturnType<typeof loadChart>>;

export interface CompareCharts {
  readonly element: HTMLElement;
  /** Mutates the charts. */
  show(columns: readonly ShownColumn[]): void;
  dispose(): void;
}

/** The charts of a sheet, those of all columns laid over one another. */
export function createCompareCharts(desk: Desk, sheet: Sheet): CompareCharts {
  const charts = sheet.parts.flatMap((part) =>
    part.kind === 'chart' && part.chart !== undefined && part.chart.against === undefined
      ? [part.chart]
      : [],
  );
  return joinFigures(charts.map((chart, i) => createFigure(desk, sheet, chart, i)));
}

/** Figures one after the other, shown and disposed of as one. */
export function joinFigures(figures: readonly CompareCharts[]): CompareCharts {
  return {
    element: h('div', { class: 'overlays' }, ...figures.map(({ element }) => element)),
    show: (columns) => figures.forEach((figure) => void figure.show(columns)),
    dispose: () => figures.forEach((figure) => void figure.dispose()),
  };
}

function createFigure(
  desk: Desk,
  sheet: Sheet,
  chart: ChartStatement,
  place: number,
): CompareCharts {
  const id = `overlay-${place}`;
  const select = h('select', { id: `${id}-line`, on: { change: () => drawn.redraw() } });
  const label = h('label', { for: `${id}-line` }, 'Line compared');
  const choice = h('p', { class: 'overlay-line', hidden: true }, label, ' ', select);
  const sentence = h('span');
  const numbers = createNumberFold(`Numbers side by side of: ${chart.title}`, () => drawn.redraw());
  const drawn = createDrawn('plot', loadChart, draw);
  let shown: readonly ShownColumn[] = [];

  function draw(tool: ChartTool, width: number): Element | undefined {
    const layers = listLayers(desk, sheet, chart, shown);
    if (layers.length === 0) {
      fill(sentence, 'There is no value to draw.');
      return undefined;
    }
    offerLines(select, listLines(layers));
    choice.hidden = select.options.length < 2;
    const data: ChartData = overlayCharts(layers, select.value === '' ? undefined : select.value);
    fill(sentence, tool.chartSentence(data));
    numbers.show(() => [tool.createChartTable(data)]);
    return tool.chartSVG(data, { document, width: Math.max(width, LEAST_WIDTH), idPrefix: id });
  }

  const caption = h('figcaption', {}, h('b', {}, `${chart.title}, side by side.`), ' ', sentence);
  return {
    element: h('figure', { class: 'chart' }, choice, drawn.element, caption, numbers.element),
    show(columns) {
      shown = columns;
      drawn.redraw();
    },
    dispose: drawn.dispose,
  };
}

/** Columns of which the chart can be worked. */
function listLayers(
  desk: Desk,
  sheet: Sheet,
  chart: ChartStatement,
  columns: readonly ShownColumn[],
): readonly ChartLayer[] {
  return columns.flatMap(({ name, frame }) => {
    if (frame === undefined) return [];
    const data = sweepChart(desk.book, frame, chart, sheet.name, desk.system());
    const isDrawn =
      'series' in data &&
      data.series.some(({ points }) => points.some(([, y]) => Number.isFinite(y)));
    return isDrawn ? [{ name, data: data as ChartData }] : [];
  });
}

/** Mutates the choice: the lines as they are now; the chosen one stays, else it is the last. */
function offerLines(select: HTMLSelectElement, lines: readonly string[]): void {
  const before = select.value;
  fill(select, ...lines.map((line) => h('option', { value: line }, line)));
  select.value = lines.includes(before) ? before : (lines.at(-1) ?? '');
}
