import type { Expression } from '../language/tree.ts';
import { callsIn } from '../language/walk.ts';
import type { Desk } from './desk.ts';
import { type Child, fill, h } from './element.ts';

const NOT_LOADED = 'It could not be loaded. Load the page again.';

/**
 * Where the formulas of the trade behind a result come from, each to be opened: what it gives, its
 * source, what it is good for, an example. Functions of the language explain themselves in the guide.
 */
export function createFunctionNotes(desk: Desk, tree: Expression): readonly HTMLElement[] {
  return callsIn(tree).flatMap((name) =>
    desk.book.functions.get(name)?.source === undefined ? [] : [createFunctionNote(name)],
  );
}

function createFunctionNote(name: string): HTMLElement {
  const words = h('div');
  const details = h(
    'details',
    { class: 'about-function', on: { toggle: open } },
    h('summary', {}, `Where does “${name.replaceAll('_', ' ')}” come from?`),
    words,
  );

  async function open(): Promise<void> {
    if (!details.open || words.childElementCount > 0) return;
    try {
      fill(words, ...(await describe(name)));
    } catch {
      fill(words, h('p', { class: 'failed' }, NOT_LOADED));
    }
  }

  return details;
}

async function describe(name: string): Promise<readonly Child[]> {
  const { findProse } = await import('./function-prose.ts');
  const { doc, source, validity, example } = findProse(name)!;
  return [
    h('p', {}, doc),
    h('p', {}, h('b', {}, 'Source: '), source!),
    validity !== undefined && h('p', {}, h('b', {}, 'Good for: '), validity),
    h(
      'p',
      {},
      h('b', {}, 'For example: '),
      h('code', {}, example[0]),
      ' is ',
      h('code', {}, example[1]),
    ),
  ];
}
