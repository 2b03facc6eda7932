import type { MapData } from '../sheet/map-data.ts';
import type { ChartStatement, Sheet } from '../sheet/sheet.ts';
import { type CompareCharts, joinFigures } from './compare-charts.ts';
import type { Desk } from './desk.ts';
import { createDrawn, LEAST_WIDTH } from './drawn.ts';
import { h } from './element.ts';
import { loadMap } from './load-drawings.ts';
import { createNumberFold } from './number-fold.ts';
import type { ShownColumn } from './shown-column.ts';

type MapTool = Awaited<ReturnType<typeof loadMap>>;

/** What lies between two maps, in px. */
const GAP = 16;

interface NamedMap {
  readonly name: string;
  readonly data: MapData;
}

/** The maps of a sheet, one for each column: contours laid over contours could not be told apart. */
export function createCompareMaps(desk: Desk, sheet: Sheet): CompareCharts {
  const charts = sheet.parts.flatMap((part) =>
    part.kind === 'chart' && part.chart?.against !== undefined ? [part.chart] : [],
  );
  return joinFigures(charts.map((chart, i) => createFigure(desk, sheet, chart, i)));
}

function createFigure(
  desk: Desk,
  sheet: Sheet,
  chart: ChartStatement,
  place: number,
): CompareCharts {
  const numbers = createNumberFold(`Numbers side by side of: ${chart.title}`, () => drawn.redraw());
  const drawn = createDrawn('plot', loadMap, draw);
  let shown: readonly ShownColumn[] = [];

  function draw(tool: MapTool, width: number): Element {
    const maps = listMaps(tool, desk, sheet, chart, shown);
    if (maps.length === 0) return h('p', {}, 'There is no value to draw.');
    numbers.show(() => maps.flatMap((map) => setOut(map, tool)));
    const each = Math.max(LEAST_WIDTH, widthOfEach(width, maps.length));
    return h(
      'div',
      { class: 'maps' },
      ...maps.map((map, i) => drawMap(map, tool, each, `compared-${place}-${i}`)),
    );
  }

  const caption = h('figcaption', {}, h('b', {}, `${chart.title}, side by side.`));
  return {
    element: h('figure', { class: 'chart' }, drawn.element, caption, numbers.element),
    show(columns) {
      shown = columns;
      drawn.redraw();
    },
    dispose: drawn.dispose,
  };
}

/** Columns of which the map can be worked. */
function listMaps(
  { sweepMap }: MapTool,
  desk: Desk,
  sheet: Sheet,
  chart: ChartStatement,
  columns: readonly ShownColumn[],
): readonly NamedMap[] {
  return columns.flatMap(({ name, frame }) => {
    if (frame === undefined) return [];
    const data = sweepMap(desk.book, frame, chart, sheet.name, desk.system());
    return 'values' in data && data.values.some(Number.isFinite) ? [{ name, data }] : [];
  });
}

/** As many in a row as the page has room for. */
function widthOfEach(width: number, maps: number): number {
  const inRow = Math.max(1, Math.min(maps, Math.floor((width + GAP) / (LEAST_WIDTH + GAP))));
  return Math.floor((width + GAP) / inRow) - GAP;
}

function drawMap(
  { name, data }: NamedMap,
  { mapSVG, mapStanding }: MapTool,
  width: number,
  idPrefix: string,
): HTMLElement {
  return h(
    'div',
    {},
    h('p', {}, h('b', {}, name)),
    mapSVG(data, { document, width, idPrefix }),
    h('p', {}, mapStanding(data)),
  );
}

function setOut({ name, data }: NamedMap, { createMapTable }: MapTool): readonly HTMLElement[] {
  return [h('p', {}, h('b', {}, name)), createMapTable(data)];
}
