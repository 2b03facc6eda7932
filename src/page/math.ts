import type { MathElement } from '../language/print-math.ts';
import { breakFormula } from './break-formula.ts';
import { inNamespace, MATHML } from './element.ts';
import { createScrollBox } from './scroll-box.ts';

/** A formula as MathML in a box of its own that scrolls when the formula is wider than the page. */
export function createFormula(tree: MathElement): HTMLElement {
  return createScrollBox('formula', 'Formula', createMath(breakFormula(tree)));
}

/** MathML nodes from plain data. */
export function createMath(tree: MathElement): Element {
  const children = tree.children.map((child) =>
    typeof child === 'string' ? child : createMath(child),
  );
  return inNamespace(MATHML, tree.tag, tree.attributes ?? {}, ...children);
}
