import type { MathElement } from '../language/print-math.ts';

/** Signs at which a long formula may go on in the next line. */
const BREAKS: ReadonlySet<string> = new Set(['=', '+', '−', '×', '<', '>', '≤', '≥', '≠']);

/** Values in the brackets of a function from which on its line may break between them. */
const MANY = 4;

/**
 * A formula whose outermost sums and products lie side by side in one row, marked `breaks`: the
 * page lays that row out as words, so that it breaks at its signs, and behind the commas of a
 * function of many values. What else stands in brackets or in a fraction stays whole.
 */
export function breakFormula(tree: MathElement): MathElement {
  return { ...tree, children: tree.children.map(breakChild) };
}

function breakChild(child: MathElement | string): MathElement | string {
  if (typeof child === 'string' || child.tag !== 'mrow') return child;
  return { tag: 'mrow', attributes: { class: 'breaks' }, children: flatten(child) };
}

function flatten(row: MathElement): readonly (MathElement | string)[] {
  if (isLongCall(row)) return splitCall(row);
  return row.children.flatMap((child) =>
    typeof child !== 'string' && (isChain(child) || isLongCall(child)) ? flatten(child) : [child],
  );
}

/** The name of a function, then many values in brackets with commas between. */
function isLongCall({ tag, children }: MathElement): boolean {
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
function splitCall({ children }: MathElement): readonly MathElement[] {
  const pieces = [children.slice(0, 2)];
  for (let i = 2; i < children.length; i += 2) pieces.push(children.slice(i, i + 2));
  return pieces.map((piece) => ({ tag: 'mrow', children: piece }));
}

function isComma(child: MathElement | string): boolean {
  return typeof child !== 'string' && child.tag === 'mo' && textOf(child) === ',';
}

/** A sum or product: a sign stands between its parts, and no bracket around them. */
function isChain({ tag, children }: MathElement): boolean {
  return tag === 'mrow' && children.slice(1).some(isBreak) && !children.some(isFence);
}

function isBreak(child: MathElement | string): boolean {
  return typeof child !== 'string' && child.tag === 'mo' && BREAKS.has(textOf(child));
}

function isFence(child: MathElement | string): boolean {
  return typeof child !== 'string' && child.tag === 'mo' && /^[()[\]{|]$/.test(textOf(child));
}

function textOf({ children }: MathElement): string {
  return children.filter((child) => typeof child === 'string').join('');
}
