import type { NameNode } from '../language/tree.ts';
import { namesIn } from '../language/walk.ts';
import type { ChartStatement, Sheet } from '../sheet/sheet.ts';
import { type Desk, findCell } from './desk.ts';
import { createDrawn } from './drawn.ts';
import { fill, h } from './element.ts';
import { loadMap } from './load-drawings.ts';
import { createScrollBox } from './scroll-box.ts';
import type { View } from './view.ts';

type MapTool = Awaited<ReturnType<typeof loadMap>>;

/** What a map needs at the least to keep its words apart. */
const LEAST_WIDTH = 300;

/** A result over two values at once: contour lines, the sentence that tells them, the numbers one click away. */
export function createMap(desk: Desk, sheet: Sheet, chart: ChartStatement, up: NameNode): View {
  const id = `map-${chart.place.line}`;
  const sentence = h('span');
  const table = createScrollBox('wide', `Numbers of: ${chart.title}`);
  const numbers = h(
    'details',
    { on: { toggle: () => drawn.redraw() } },
    h('summary', {}, 'The numbers'),
    table,
  );
  const drawn = createDrawn('plot', loadMap, draw);

  function draw(tool: MapTool, width: number): Element | undefined {
    const data = tool.sweepMap(desk.book, desk.frame(), chart, sheet.name, desk.system());
    if ('code' in data) {
      fill(sentence, data.message);
      return undefined;
    }
    fill(sentence, tool.mapSentence(data));
    if (numbers.open) fill(table, tool.createMapTable(data));
    return tool.mapSVG(data, { document, width: Math.max(width, LEAST_WIDTH), idPrefix: id });
  }

  const caption = h('figcaption', {}, h('b', {}, `${chart.title}.`), ' ', sentence);
  const values = [
    ...chart.results,
    chart.over,
    up,
    ...chart.marks.map((mark) => mark.value),
    ...chart.limits.flatMap((limits) => [limits.least, limits.most]),
  ];
  const names = new Set(values.flatMap(namesIn));
  return {
    element: h('figure', { class: 'chart' }, drawn.element, caption, numbers),
    cells: [...names].flatMap((name) => findCell(desk, sheet.name, name)?.index ?? []),
    refresh: drawn.redraw,
    dispose: drawn.dispose,
  };
}
