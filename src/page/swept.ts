import type { DrawingOptions } from '../drawing/svg.ts';
import type { Problem } from '../language/problem.ts';
import { namesIn } from '../language/walk.ts';
import type { Book } from '../sheet/book.ts';
import type { Frame } from '../sheet/frame.ts';
import type { ChartStatement, Sheet } from '../sheet/sheet.ts';
import type { System } from '../units/unit.ts';
import { type Desk, findCell } from './desk.ts';
import { createDrawn, LEAST_WIDTH } from './drawn.ts';
import { fill, h } from './element.ts';
import { createNumberFold } from './number-fold.ts';
import type { View } from './view.ts';

/** How results over given values are worked, told, set out and drawn. */
export interface SweptTool<Data extends object> {
  sweep(
    book: Book,
    frame: Frame,
    chart: ChartStatement,
    sheet: string,
    system: System,
  ): Data | Problem;
  sentence(data: Data): string;
  table(data: Data): HTMLElement;
  draw(data: Data, options: DrawingOptions): SVGElement;
}

/** Results over given values: drawn, with a sentence that tells them and the numbers one click away. */
export function createSwept<Data extends object>(
  desk: Desk,
  sheet: Sheet,
  chart: ChartStatement,
  load: () => Promise<SweptTool<Data>>,
): View {
  const idPrefix = `chart-${chart.place.line}`;
  const sentence = h('span');
  const numbers = createNumberFold(`Numbers of: ${chart.title}`, () => drawn.redraw());
  const drawn = createDrawn('plot', load, draw);

  function draw(tool: SweptTool<Data>, width: number): Element | undefined {
    const data = tool.sweep(desk.book, desk.frame(), chart, sheet.name, desk.system());
    if ('code' in data) {
      fill(sentence, data.message);
      return undefined;
    }
    fill(sentence, tool.sentence(data));
    numbers.show(() => [tool.table(data)]);
    return tool.draw(data, { document, width: Math.max(width, LEAST_WIDTH), idPrefix });
  }

  const caption = h('figcaption', {}, h('b', {}, `${chart.title}.`), ' ', sentence);
  return {
    element: h('figure', { class: 'chart' }, drawn.element, caption, numbers.element),
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
    ...(chart.against === undefined ? [] : [chart.against.over]),
    ...(chart.lines === undefined ? [] : [chart.lines]),
    ...chart.marks.map((mark) => mark.value),
    ...chart.limits.flatMap((limits) => [limits.least, limits.most]),
  ];
  const names = new Set(values.flatMap(namesIn));
  return [...names].flatMap((name) => findCell(desk, sheet.name, name)?.index ?? []);
}
