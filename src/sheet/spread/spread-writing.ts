import type { Kind } from '../../language/kind.ts';
import type { System } from '../../units/unit.ts';
import type { Book } from '../book.ts';
import type { Cell } from '../cell.ts';
import type { Display } from '../sheet.ts';
import { showValue } from '../show.ts';
import type { SpreadWriting } from './spread-words.ts';

/** How the doubt of a result is written. It is finer than the value: one more figure is worth showing. */
export function createSpreadWriting(book: Book, cell: Cell, system?: System): SpreadWriting {
  const kind = cell.kind as Extract<Kind, { readonly dimension: unknown }>;
  const single: Kind = { type: 'quantity', dimension: kind.dimension };
  const { unit } = cell.display;
  const display: Display = {
    ...(unit === undefined ? {} : { unit }),
    ...finer(cell.display),
  };
  return {
    show: (value) => showValue(value, single, display, system).text,
    name: (index) => book.cells[index]!.name.replaceAll('_', ' '),
  };
}

/** A tenth of the last digit; for a fraction of an inch the decimal place that lies below a tenth of it. */
function finer({ resolution, fraction }: Display): Pick<Display, 'resolution'> {
  if (resolution !== undefined) return { resolution: resolution / 10 };
  return fraction === undefined ? {} : { resolution: 10 ** Math.floor(-Math.log10(10 * fraction)) };
}
