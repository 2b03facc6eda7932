import type { MathElement } from '../language/print-math.ts';

/** Signs at which a long formula may go on in the next line. */
const BREAKS: ReadonlySet<string> = new Set(['=', '+', '−', '×', '<', '>', '≤', '≥', '≠']);

/** Values in the brackets of a function from which on its line may break between them. */
const MANY = 4;

/** What is built up or down: brackets grow with it only while all of it stays in one row. */
const TALL: ReadonlySet<string> = new Set(['mfrac', 'msqrt', 'mtable']);

/**
 * A formula whose outermost sums and products lie side by side in one row, marked `breaks`: the
 * page lays that row out as words, so that it breaks at its signs, and behind the commas of a
 * function of many values. A shorter function, a list and what stands in brackets are rows of the
 * same kind inside of it: they stay whole as long as a line has room for them. Fractions and roots
 * are never broken.
 */
export function breakFormula(tree: MathElement): MathElement {
  return { ...tree, children: tree.children.map(breakChild) };
}

function breakChild(child: MathElement | string): MathElement | string {
  if (typeof child === 'string' || child.tag !== 'mrow') return child;
  return createBreaks(flatten(child));
}

function createBreaks(children: readonly (MathElement | string)[]): MathElement {
  return { tag: 'mrow', attributes: { class: 'breaks' }, children };
}

function flatten(row: MathElement): readonly (MathElement | string)[] {
  if (isLongCall(row)) return splitCall(row);
  return row.children.flatMap((child, i) => {
    if (typeof child === 'string') return [child];
    if (isChain(child) || isLongCall(child)) return flatten(child);
    const parts = partsOf(child);
    if (parts.length === 1) return parts;
    const isAllThereIs = i === row.children.length - 1 && isEquals(row.children[i - 1]);
    return isAllThereIs ? parts : [createBreaks(parts)];
  });
}

/** The name of a function, then many values in brackets with commas between. */
function isLongCall(row: MathElement): boolean {
  return isCall(row) && row.children.filter(isComma).length >= MANY - 1;
}

function isCall({ tag, children: [, bracket] }: MathElement): boolean {
  return tag === 'mrow' && isFence(bracket);
}

/** Name and bracket, then each value with the comma or the bracket behind it. */
function splitCall({ children }: MathElement): readonly MathElement[] {
  const pieces = [children.slice(0, 2)];
  for (let i = 2; i < children.length; i += 2) pieces.push(children.slice(i, i + 2));
  return pieces.map(createRow);
}

/** Where a line that is too short for all of it may break: at least one part. */
function partsOf(element: MathElement): readonly MathElement[] {
  const { tag, children } = element;
  if (tag !== 'mrow' || isTall(element)) return [element];
  if (isChain(element)) return children.flatMap((child) => partsOf(child as MathElement));
  const open = children.findIndex(isFence);
  const close = children.findLastIndex(isFence);
  if (open < 0 || open > 1 || close === open) return [element];
  return splitBrackets(children as readonly MathElement[], open, close);
}

/** What opens stays with what follows, a comma or what closes with what stands before it. */
function splitBrackets(
  children: readonly MathElement[],
  open: number,
  close: number,
): readonly MathElement[] {
  const values = children.slice(open + 1, close);
  const parts = values.flatMap((value, i) => {
    if (isComma(value)) return [];
    const behind = i === values.length - 1 ? children.slice(close) : values.slice(i + 1, i + 2);
    const own = partsOf(value);
    return [...own.slice(0, -1), createRow([own.at(-1)!, ...behind])];
  });
  const head = children.slice(0, open + 1);
  // Behind the name of a function there is room for a break of its own.
  if (open === 1) return [createRow(head), ...parts];
  return parts.length === 0
    ? [createRow(children)]
    : [createRow([...head, parts[0]!]), ...parts.slice(1)];
}

function createRow(children: readonly (MathElement | string)[]): MathElement {
  return { tag: 'mrow', children };
}

function isTall({ tag, children }: MathElement): boolean {
  return TALL.has(tag) || children.some((child) => typeof child !== 'string' && isTall(child));
}

function isComma(child: MathElement | string): boolean {
  return isSign(child, /^,$/);
}

function isEquals(child: MathElement | string | undefined): boolean {
  return isSign(child, /^=$/);
}

/** A sum or product: a sign stands between its parts, and no bracket around them. */
function isChain({ tag, children }: MathElement): boolean {
  return tag === 'mrow' && children.slice(1).some(isBreak) && !children.some(isFence);
}

function isBreak(child: MathElement | string): boolean {
  if (typeof child === 'string') return false;
  return child.tag === 'mtext' ? textOf(child).trim() === 'otherwise' : isSign(child, undefined);
}

function isFence(child: MathElement | string | undefined): boolean {
  return isSign(child, /^[()[\]{|]$/);
}

function isSign(child: MathElement | string | undefined, kind: RegExp | undefined): boolean {
  if (child === undefined || typeof child === 'string' || child.tag !== 'mo') return false;
  return kind === undefined ? BREAKS.has(textOf(child)) : kind.test(textOf(child));
}

function textOf({ children }: MathElement): string {
  return children.filter((child) => typeof child === 'string').join('');
}
