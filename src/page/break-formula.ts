import type { MathTree } from './math.ts';

/** Signs at which a long formula may go on in the next line. */
const BREAKS: ReadonlySet<string> = new Set(['=', '+', '−', '×', '<', '>', '≤', '≥', '≠']);

/** Values in the brackets of a function from which on its line may break between them. */
const MANY = 4;

/**
 * A formula whose outermost sums and products lie side by side in one row, marked `breaks`: the
 * page lays that row out as words, so that it breaks at its signs, and behind the commas of a
 * function of many values. What else stands in brackets or in a fraction stays whole.
 */
export function breakFormula(tree: MathTree): MathTree {
  return { ...tree, children: tree.children.map(breakChild) };
}

function breakChild(child: MathTree | string): MathTree | string {
  if (typeof child === 'string' || child.tag !== 'mrow') return child;
  return { tag: 'mrow', attributes: { class: 'breaks' }, children: flatten(child) };
}

function flatten(row: MathTree): readonly (MathTree | string)[] {
  if (isLongCall(row)) return splitCall(row);
  return row.children.flatMap((child) =>
    typeof child !== 'string' && (isChain(child) || isLongCall(child)) ? flatten(child) : [child],
  );
}

/** The name of a function, then many values in brackets with commas between. */
function isLongCall({ tag, children }: MathTree): boolean {
  const [, bracket] = children;
  return (
    tag === 'mrow' &&
    typeof bracket !== 'string' &&
    bracket !== undefined &&
    isFence(bracket) &&
    children.filter(isComma).length >= MANY - 1
  );
}

/** Name and bracket, then each value with the comma or the bracket behind it. */
function splitCall({ children }: MathTree): readonly MathTree[] {
  const pieces = [children.slice(0, 2)];
  for (let i = 2; i < children.length; i += 2) pieces.push(children.slice(i, i + 2));
  return pieces.map((piece) => ({ tag: 'mrow', children: piece }));
}

function isComma(child: MathTree | string): boolean {
  return typeof child !== 'string' && child.tag === 'mo' && textOf(child) === ',';
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
