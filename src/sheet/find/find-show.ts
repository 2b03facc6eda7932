import type { Kind } from '../../language/kind.ts';
import type { System } from '../../units/unit.ts';
import type { Cell, GivenCell } from '../cell.ts';
import type { Display } from '../sheet.ts';
import { showValue } from '../show.ts';
import type { FindShow } from './find-words.ts';

/**
 * How the answer to a question about a result is written.
 *
 * @param element what the element of a list is called: `5th`
 */
export function createFindShow(
  given: GivenCell,
  result: Cell,
  element: string | undefined,
  system?: System,
): FindShow {
  const kind = result.kind as Extract<Kind, { readonly dimension: unknown }>;
  const single: Kind = { type: 'quantity', dimension: kind.dimension };
  const name = lowerFirst(result.label);
  return {
    given: (value) => showValue(value, given.kind!, finer(given.display), system).text,
    result: (value) => showValue(value, single, result.display, system).text,
    givenName: lowerFirst(given.label),
    resultName: element === undefined ? name : `${name} (${element})`,
  };
}

/** An exact answer is shown closer than the given is usually read. */
export function finer({ resolution, ...rest }: Display): Display {
  return resolution === undefined ? rest : { ...rest, resolution: resolution / 10 };
}

/** An abbreviation keeps its capitals. */
function lowerFirst(text: string): string {
  return /^\p{Lu}(?!\p{Lu})/u.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}
