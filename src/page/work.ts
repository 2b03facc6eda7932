import { mathElement, mathWords, printMath } from '../language/print-math.ts';
import { namesIn } from '../language/walk.ts';
import type { Cell } from '../sheet/cell.ts';
import type { Sheet, WorkBlock, WorkStatement } from '../sheet/sheet.ts';
import { signWords } from '../sheet/sign-words.ts';
import { createAnswer } from './answer.ts';
import { carriedNotes } from './carried.ts';
import { type Desk, findCell } from './desk.ts';
import { fill, h } from './element.ts';
import { namesFor } from './element-names.ts';
import { createRow, sourceNote } from './margin.ts';
import { createFormula } from './math.ts';
import { createNumberLeaves } from './number-leaves.ts';
import { createResultTools } from './result-tools.ts';
import type { View } from './view.ts';
import { createTrouble } from './waits.ts';
import { createWarnings } from './warnings.ts';

/** Formulas with their working: name, formula, formula with the numbers in it, answer. */
export function createWork(desk: Desk, sheet: Sheet, block: WorkBlock): View {
  const lines = block.statements.flatMap((statement) => {
    const cell = findCell(desk, sheet.name, statement.name);
    return cell?.role === 'work' && cell.statement === statement
      ? [createLine(desk, sheet, cell, statement)]
      : [];
  });
  return {
    element: h(
      'div',
      { class: 'work block', role: 'group', 'aria-label': 'Working' },
      ...lines.map((line) => line.element),
    ),
    cells: lines.flatMap((line) => line.cells),
    refresh: () => lines.forEach((line) => void line.refresh()),
  };
}

function createLine(desk: Desk, sheet: Sheet, cell: Cell, statement: WorkStatement): View {
  const tree = statement.expression;
  const lead = [mathWords(statement.name.replaceAll('_', ' ')), mathElement('mo', '=')];
  const formula = createFormula(mathElement('math', mathElement('mrow', ...lead, printMath(tree))));
  const numbers = h('div', { class: 'with-numbers' });
  const answer = h('div');
  const tools = createResultTools(desk, cell);
  const hasNames = namesIn(tree).length > 0;
  const line = h(
    'div',
    { class: 'work-line', id: cell.name, tabindex: -1 },
    h('p', { class: 'work-name' }, cell.label),
    h('div', { class: 'formulas' }, formula, numbers),
    answer,
    tools.element,
  );

  function refresh(): void {
    const outcome = desk.outcomeOf(cell.index);
    const worked = outcome.state === 'value';
    const leaves = createNumberLeaves(desk, sheet.name);
    const worth = worked && hasNames;
    fill(
      numbers,
      worth &&
        createFormula(
          mathElement('math', mathElement('mrow', mathElement('mo', '='), printMath(tree, leaves))),
        ),
    );
    fill(
      answer,
      worked ? answerOf(outcome.value) : createTrouble(desk, cell),
      worked && desk.doubt()?.createSpreadLine(desk, cell),
      ...createWarnings(desk, cell),
    );
    tools.refresh();
  }

  function answerOf(value: Parameters<typeof createAnswer>[1]): HTMLElement {
    const words =
      typeof value === 'number' ? signWords(statement.signs, value, cell.display) : undefined;
    return createAnswer(cell, value, desk.system(), namesFor(desk, cell), words);
  }

  refresh();
  const notes = [...sourceNote(cell.source), ...carriedNotes(desk, cell)];
  return { element: createRow(line, notes), cells: [cell.index], refresh };
}
