import type { Kind } from '../language/kind.ts';
import { printText } from '../language/print-text.ts';
import type { Expression } from '../language/tree.ts';
import type { Find, GivenCell, LinkedFind } from '../sheet/cell.ts';
import { inferDisplayUnit } from '../sheet/display-unit.ts';
import { answerFind } from '../sheet/find/find-given.ts';
import { finer } from '../sheet/find/find-show.ts';
import { describeFound, type FindShow } from '../sheet/find/find-words.ts';
import type { Display, FindBlock, Sheet } from '../sheet/sheet.ts';
import { showValue } from '../sheet/show.ts';
import type { Desk } from './desk.ts';
import { fill, h } from './element.ts';
import type { View } from './view.ts';

/** Stocked sizes worth showing beside an exact answer. */
const MOST_STOCKED = 5;

/** Questions asked backwards: the exact answer in words, and what the sizes in stock give. */
export function createFinds(desk: Desk, sheet: Sheet, block: FindBlock): View {
  const finds = desk.book.finds.filter(({ statement }) => block.statements.includes(statement));
  const views = finds.map((find) => createFind(desk, sheet, find));
  return {
    element: h(
      'section',
      { class: 'block finds', 'aria-label': block.title },
      h('p', { class: 'finds-title' }, block.title),
      ...views.map((view) => view.element),
    ),
    cells: views.flatMap((view) => view.cells),
    refresh: () => views.forEach((view) => void view.refresh()),
  };
}

function createFind(desk: Desk, sheet: Sheet, { statement, linked, problem }: Find): View {
  if (linked === undefined) {
    const element = h('p', { class: 'trouble' }, `There is no answer: ${problem!.message}.`);
    return { element, cells: [], refresh: () => {} };
  }
  const element = h('div', { class: 'find' });
  const show = createShow(desk, sheet, linked);

  function refresh(): void {
    const found = answerFind(desk.book, desk.frame(), sheet.name, linked!);
    const words = found === undefined ? 'Its range has no value yet.' : describeFound(found, show);
    const stocked = found?.stocked.slice(0, MOST_STOCKED) ?? [];
    fill(
      element,
      h('p', { class: 'work-name' }, statement.label),
      h('p', { class: 'found' }, words),
      stocked.length > 0 &&
        h(
          'ul',
          { class: 'stocked' },
          ...stocked.map(({ given, result }) =>
            h('li', {}, `${show.given(given)} gives ${show.result(result)}`),
          ),
        ),
    );
  }

  refresh();
  const formulas = [
    linked.result,
    linked.target,
    ...(linked.near === undefined ? [] : [linked.near]),
  ];
  const names = formulas.flatMap(({ kinds }) => [...kinds.keys()]);
  const read = names.flatMap((node) =>
    node.type === 'name' ? (desk.book.find(sheet.name, node.name)?.index ?? []) : [],
  );
  return { element, cells: [linked.given, ...read], refresh };
}

function createShow(desk: Desk, sheet: Sheet, { given, result, target }: LinkedFind): FindShow {
  const cell = desk.book.cells[given] as GivenCell;
  const { tree, kind } = result;
  const named = tree.type === 'name' ? desk.book.find(sheet.name, tree.name) : undefined;
  const unit =
    'dimension' in kind
      ? inferDisplayUnit(kind.dimension, unitsIn(desk, sheet, result))
      : undefined;
  const display: Display = named?.display ?? (unit === undefined ? {} : { unit });
  const show = (value: number, of: Kind, how: Display) =>
    showValue(value, of, how, desk.system()).text;
  return {
    given: (value) => show(value, cell.kind!, finer(cell.display)),
    result: (value) => show(value, target.kind, display),
    targetName: nameOf(target.tree),
    givenName: cell.label.charAt(0).toLowerCase() + cell.label.slice(1),
    resultName: nameOf(tree),
  };

  function nameOf(formula: Expression): string {
    const own =
      formula.type === 'name' ? desk.book.find(sheet.name, formula.name)?.label : undefined;
    return (own ?? printText(formula).replaceAll('_', ' ')).replace(/^./, (c) => c.toLowerCase());
  }
}

function unitsIn(desk: Desk, sheet: Sheet, { kinds }: LinkedFind['result']) {
  return [...kinds.keys()].flatMap((node) =>
    node.type === 'name' ? (desk.book.find(sheet.name, node.name)?.display.unit ?? []) : [],
  );
}
