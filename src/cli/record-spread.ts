import type { Book } from '../sheet/book.ts';
import type { Cell } from '../sheet/cell.ts';
import type { Frame } from '../sheet/frame.ts';
import { type Spread, spreadOf } from '../sheet/spread/spread.ts';
import type { RangeRecord, ResultRecord, ShareRecord } from './solve-record.ts';

type Sure = Pick<ResultRecord, 'worst' | 'likely' | 'shares'>;

/**
 * How sure a result is: worst case, likely range, whose doubt it is. Nothing where it hangs on nothing
 * that is in doubt.
 *
 * @param factor of the unit that the result is recorded in
 */
export function recordSpread(book: Book, frame: Frame, cell: Cell, factor: number): Sure {
  const spreads = spreadOf(book, frame, cell.index);
  if (spreads.length === 0) return {};
  const worst = spreads.map((spread) => recordRange(spread.worst, factor));
  const likely = spreads.map(({ straight, likely: range }) =>
    straight ? recordRange(range, factor) : null,
  );
  const shares = spreads.map((spread) => recordShares(book, cell, spread));
  if (cell.kind?.type === 'list') return { worst, likely, shares };
  return { worst: worst[0]!, likely: likely[0]!, shares: shares[0]! };
}

function recordRange({ from, to }: RangeRecord, factor: number): RangeRecord {
  return { from: from / factor, to: to / factor };
}

function recordShares(book: Book, { sheet }: Cell, { shares }: Spread): readonly ShareRecord[] {
  return shares.map(({ cell, share }) => {
    const given = book.cells[cell]!;
    return { name: given.sheet === sheet ? given.name : given.id, share };
  });
}
