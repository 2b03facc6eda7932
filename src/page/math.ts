import { h, inNamespace, MATHML } from './element.ts';

/** What the formula printer gives: a MathML element as plain data. */
export interface MathTree {
  readonly tag: string;
  readonly attributes?: { readonly [name: string]: string };
  readonly children: readonly (MathTree | string)[];
}

/** A formula as MathML in a box of its own that scrolls when the formula is wider than the page. */
export function createFormula(tree: MathTree): HTMLElement {
  // A box that scrolls must be reachable by keyboard, and then needs a name.
  return h(
    'div',
    { class: 'formula', tabindex: 0, role: 'group', 'aria-label': 'Formula' },
    createMath(tree),
  );
}

/** MathML nodes from plain data. */
export function createMath(tree: MathTree): Element {
  const children = tree.children.map((child) =>
    typeof child === 'string' ? child : createMath(child),
  );
  return inNamespace(MATHML, tree.tag, tree.attributes ?? {}, ...children);
}
