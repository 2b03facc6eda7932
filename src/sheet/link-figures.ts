import { type Kind, nameKind } from '../language/kind.ts';
import { nearest } from '../units/nearest.ts';
import type { Cell, Figures, LinkedFigure, LinkedFigures } from './cell.ts';
import { attemptLink, LinkFault, linkFault } from './link-fault.ts';
import type { LinkContext } from './link-formula.ts';
import type { FigureStatement, FiguresStatement, Sheet } from './sheet.ts';

/** Links a table of figures: lists stand side by side as columns, single values below one another. */
export function linkFigures(
  statement: FiguresStatement,
  sheet: Sheet,
  context: LinkContext,
): Figures {
  const base = { sheet: sheet.name, statement };
  return { ...base, ...attemptLink(sheet, () => createLinked(statement, sheet, context)) };
}

function createLinked(
  { figures }: FiguresStatement,
  sheet: Sheet,
  context: LinkContext,
): LinkedFigures {
  const linked = figures.map((figure) => linkFigure(figure, sheet, context));
  const isList = isListKind(linked[0]!.kind);
  const odd = linked.findIndex(({ kind }) => isListKind(kind) !== isList);
  if (odd < 0) return { layout: isList ? 'columns' : 'rows', figures: linked };
  throw linkFault('mixed-figures', figures[odd]!.name, {
    first: `${figures[0]!.name.name} (${nameKind(linked[0]!.kind)})`,
    odd: `${figures[odd]!.name.name} (${nameKind(linked[odd]!.kind)})`,
  });
}

function linkFigure(
  { name, label, sheet: other }: FigureStatement,
  sheet: Sheet,
  { drafts, cells }: LinkContext,
): LinkedFigure & { readonly kind: Kind } {
  const own = drafts.names.get(other?.name ?? sheet.name);
  if (own === undefined) {
    const near = nearest(other!.name, [...drafts.names.keys()]);
    throw linkFault('unknown-sheet', other!, { name: other!.name, near });
  }
  const cell = cells[own.get(name.name) ?? -1];
  if (cell === undefined) {
    throw linkFault('unknown-name', name, {
      name: name.name,
      near: nearest(name.name, [...own.keys()]),
    });
  }
  if (cell.kind === undefined) throw new LinkFault(waitFor(cell));
  return { cell: cell.index, label: label ?? cell.label, kind: cell.kind };
}

/** The cell's own fault is told where the cell stands; the table only waits. */
function waitFor(cell: Cell) {
  const why = 'has an error';
  return linkFault('waiting', { from: 0, to: 0 }, { name: cell.name, why }).problem;
}

function isListKind({ type }: Kind): boolean {
  return type === 'list' || type === 'texts';
}
