import type { MathTree } from './math.ts';

/** Signs at which a long formula may go on in the next line. */
const BREAKS: ReadonlySet<string> = new Set(['=', '+', '−', '×', '<', '>', '≤', '≥', '≠']);

/**
 * A formula whose outermost sums and products lie side by side in one row, marked `breaks`: the
 * page lays that row out as words, so that it breaks at its signs. What stands in brackets or in a
 * fraction stays whole.
 */
export function breakFormula(tree: MathTree): MathTree {
  return { ...tree, children: tree.children.map(breakChild) };
}

function breakChild(child: MathTree | string): MathTree | string {
  if (typeof child === 'string' || child.tag !== 'mrow') return child;
  return { tag: 'mrow', attributes: { class: 'breaks' }, children: flatten(child) };
}

function flatten(row: MathTree): readonly (MathTree | string)[] {
  return row.children.flatMap((child) =>
    typeof child !== 'string' && isChain(child) ? flatten(child) : [child],
  );
}

/** A sum or product: a sign stands between its parts, and no bracket around them. */
function isChain({ tag, children }: MathTree): boolean {
  return tag === 'mrow' && children.slice(1).some(isBreak) && !children.some(isFence);
}

function isBreak(child: MathTree | string): boolean {
  return typeof child !== 'string' && child.tag === 'mo' && BREAKS.has(textOf(child));
}

function isFence(child: MathTree | string): boolean {
  return typeof child !== 'string' && child.tag === 'mo' && /^[()[\]{|]$/.test(textOf(child));
}

function textOf({ children }: MathTree): string {
  return children.filter((child) => typeof child === 'string').join('');
}
