import { namesIn } from '../language/walk.ts';
import type { ChartBlock, ChartStatement, Sheet } from '../sheet/sheet.ts';
import { type Desk, findCell } from './desk.ts';
import { createDrawn } from './drawn.ts';
import { fill, h } from './element.ts';
import { loadChart } from './load-drawings.ts';
import { createMap } from './map.ts';
import { createScrollBox } from './scroll-box.ts';
import type { View } from './view.ts';

type ChartTool = Awaited<ReturnType<typeof loadChart>>;

/** What a chart needs at the least to keep its words apart. */
const LEAST_WIDTH = 300;

/** A chart with the sentence that tells what it shows, and its numbers one click away. */
export function createChart(desk: Desk, sheet: Sheet, block: ChartBlock): View {
  const { chart } = block;
  if (chart === undefined) return { element: h('div'), cells: [], refresh: () => {} };
  return chart.against === undefined
    ? createFigure(desk, sheet, chart)
    : createMap(desk, sheet, chart, chart.against.over);
}

function createFigure(desk: Desk, sheet: Sheet, chart: ChartStatement): View {
  const id = `chart-${sheet.parts.findIndex((part) => part.kind === 'chart' && part.chart === chart)}`;
  const sentence = h('span');
  const table = createScrollBox('wide', `Numbers of: ${chart.title}`);
  const numbers = h(
    'details',
    { on: { toggle: () => drawn.redraw() } },
    h('summary', {}, 'The numbers'),
    table,
  );
  const drawn = createDrawn('plot', loadChart, draw);

  function draw(tool: ChartTool, width: number): Element | undefined {
    const data = tool.sweepChart(desk.book, desk.frame(), chart, sheet.name, desk.system());
    if ('code' in data) {
      fill(sentence, data.message);
      return undefined;
    }
    fill(sentence, tool.chartSentence(data));
    if (numbers.open) fill(table, tool.createChartTable(data));
    return tool.chartSVG(data, { document, width: Math.max(width, LEAST_WIDTH), idPrefix: id });
  }

  const caption = h('figcaption', {}, h('b', {}, `${chart.title}.`), ' ', sentence);
  return {
    element: h('figure', { class: 'chart' }, drawn.element, caption, numbers),
    cells: cellsOf(desk, sheet, chart),
    refresh: drawn.redraw,
    dispose: drawn.dispose,
  };
}

/** The cells that a chart shows; all that they hang on makes them worked again. */
function cellsOf(desk: Desk, sheet: Sheet, chart: ChartStatement): readonly number[] {
  const values = [
    ...chart.results,
    chart.over,
    ...(chart.lines === undefined ? [] : [chart.lines]),
    ...chart.marks.map((mark) => mark.value),
    ...chart.limits.flatMap((limits) => [limits.least, limits.most]),
  ];
  const names = new Set(values.flatMap(namesIn));
  return [...names].flatMap((name) => findCell(desk, sheet.name, name)?.index ?? []);
}
