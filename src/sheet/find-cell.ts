import type { Kind } from '../language/kind.ts';
import { fail } from '../language/problem.ts';
import type { NameNode } from '../language/tree.ts';
import { nearest } from '../units/nearest.ts';
import type { Cell, GivenCell } from './cell.ts';
import { LinkFault, linkFault } from './link-fault.ts';
import type { LinkContext } from './link-formula.ts';
import { originOf } from './origin.ts';
import type { Sheet } from './sheet.ts';
import { whyBroken } from './waiting.ts';

/** A cell that is not itself at fault. */
export type SoundCell = Cell & { readonly kind: Kind };

/** The cell that a name of a sheet stands for. Throws a LinkFault: no such name, or it waits for one with an error. */
export function findCell(node: NameNode, sheet: Sheet, { drafts, cells }: LinkContext): SoundCell {
  const { name } = node;
  const own = drafts.names.get(sheet.name)!;
  const index = own.get(name);
  if (index === undefined) {
    throw linkFault('unknown-name', node, { name, near: nearest(name, [...own.keys()]) });
  }
  const cell = cells[index]!;
  if (isSound(cell)) return cell;
  const waiting = fail('waiting', node, { name, why: whyBroken(cells, index) });
  throw new LinkFault({ ...waiting, waitsFor: name });
}

function isSound(cell: Cell): cell is SoundCell {
  return cell.kind !== undefined;
}

/**
 * The given that a name stands for, be it carried in from another sheet. Throws a LinkFault.
 *
 * @param doing what wants a given, as in "a chart runs over"
 */
export function findGiven(
  node: NameNode,
  doing: string,
  sheet: Sheet,
  context: LinkContext,
): GivenCell & SoundCell {
  const cell = originOf(context, findCell(node, sheet, context));
  if (cell?.role === 'given') return cell as GivenCell & SoundCell;
  const role = cell?.role === 'table' ? 'a table' : 'worked out';
  throw linkFault('not-a-given', node, { doing, name: node.name, role });
}
