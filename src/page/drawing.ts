import type { DrawingData } from '../drawing/declaration.ts';
import type { Drawing, Formula, LinkedDrawing } from '../sheet/cell.ts';
import { createDrawingData } from '../sheet/drawing-data.ts';
import type { DrawingBlock, DrawingStatement, Sheet } from '../sheet/sheet.ts';
import type { Desk } from './desk.ts';
import { createDrawn } from './drawn.ts';
import { fill, h } from './element.ts';
import { loadDrawing } from './load-drawings.ts';
import type { View } from './view.ts';

/** A dimensioned drawing to scale, drawn anew with the values that it is bound to. */
export function createDrawing(desk: Desk, sheet: Sheet, block: DrawingBlock): View {
  const drawing = desk.book.drawings.find(({ statement }) => statement === block.drawing);
  if (drawing === undefined || block.drawing === undefined) return emptyView();
  if (drawing.linked === undefined) return createFault(drawing);
  return createFigure(desk, sheet, block.drawing, drawing.linked);
}

function emptyView(): View {
  return { element: h('div'), cells: [], refresh: () => {} };
}

/** The sheet's list of problems has it too; here it stands where the drawing would. */
function createFault({ problem }: Drawing): View {
  const element = h('p', { class: 'trouble' }, `There is no drawing: ${problem!.message}.`);
  return { element, cells: [], refresh: () => {} };
}

function createFigure(
  desk: Desk,
  sheet: Sheet,
  statement: DrawingStatement,
  linked: LinkedDrawing,
): View {
  const { plan, slots } = linked;
  const idPrefix = `drawing-${statement.place.line}`;
  const words = h('span');
  const drawn = createDrawn(
    'drawn',
    () => loadDrawing(plan.name),
    (kind, width) => {
      const data = readDrawing();
      fill(words, kind.describe(data));
      return kind.draw(data, { document, width, idPrefix });
    },
  );

  function readDrawing(): DrawingData {
    const workOut = (formula: Formula) => desk.workOut(formula);
    return createDrawingData(statement.title, linked, workOut, desk.system());
  }

  const caption = h('figcaption', {}, h('b', {}, `${statement.title}.`), ' ', words);
  return {
    element: h('figure', { class: 'drawing' }, drawn.element, caption),
    cells: slots.flatMap(({ formula }) =>
      [...formula.kinds.keys()].flatMap((node) =>
        node.type === 'name' ? (desk.book.find(sheet.name, node.name)?.index ?? []) : [],
      ),
    ),
    refresh: drawn.redraw,
    dispose: drawn.dispose,
  };
}
