import { breakFormula } from './break-formula.ts';
import { inNamespace, MATHML } from './element.ts';
import { createScrollBox } from './scroll-box.ts';

/** What the formula printer gives: a MathML element as plain data. */
export interface MathTree {
  readonly tag: string;
  readonly attributes?: { readonly [name: string]: string };
  readonly children: readonly (MathTree | string)[];
}

/** A formula as MathML in a box of its own that scrolls when the formula is wider than the page. */
export function createFormula(tree: MathTree): HTMLElement {
  return createScrollBox('formula', 'Formula', createMath(breakFormula(tree)));
}

/** MathML nodes from plain data. */
export function createMath(tree: MathTree): Element {
  const children = tree.children.map((child) =>
    typeof child === 'string' ? child : createMath(child),
  );
  return inNamespace(MATHML, tree.tag, tree.attributes ?? {}, ...children);
}
