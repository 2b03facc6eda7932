import type { FunctionDeclaration } from '../language/functions/declaration.ts';
import type { Expression } from '../language/tree.ts';
import { callsIn } from '../language/walk.ts';
import type { Desk } from './desk.ts';
import { h } from './element.ts';

/**
 * Where the formulas of the trade behind a result come from, each to be opened: what it gives, its
 * source, what it is good for, an example. Functions of the language explain themselves in the guide.
 */
export function createFunctionNotes(desk: Desk, tree: Expression): readonly HTMLElement[] {
  return callsIn(tree).flatMap((name) => {
    const declaration = desk.book.functions.get(name);
    return declaration?.source === undefined ? [] : [createFunctionNote(declaration)];
  });
}

function createFunctionNote(declaration: FunctionDeclaration): HTMLElement {
  const { name, doc, source, validity, example } = declaration;
  return h(
    'details',
    { class: 'about-function' },
    h('summary', {}, `Where does “${name.replaceAll('_', ' ')}” come from?`),
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
  );
}
