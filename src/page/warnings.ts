import type { Cell } from '../sheet/cell.ts';
import type { Desk } from './desk.ts';
import { h } from './element.ts';

/** What a formula is not good for, said beside the number that it gave all the same. */
export function createWarnings(desk: Desk, cell: Cell): readonly HTMLElement[] {
  return desk
    .warningsOf(cell.index)
    .map((sentence) =>
      h(
        'p',
        { class: 'outside-validity' },
        h('b', {}, 'Outside what this is good for: '),
        sentence,
      ),
    );
}
