import { bindingOf, operandBindings } from './precedence.ts';
import type { BinaryNode, CallNode, Expression, IfNode } from './tree.ts';

/** One element of presentation MathML (MathML Core), for the page to build as nodes. */
export interface MathElement {
  readonly tag: string;
  readonly attributes?: Readonly<Record<string, string>>;
  readonly children: readonly (MathElement | string)[];
}

/** How the leaves of a formula are written: by their names, or with the numbers in. */
export interface MathLeaves {
  name(node: Extract<Expression, { type: 'name' | 'field' }>): MathElement;
  quantity(node: Extract<Expression, { type: 'quantity' }>): MathElement;
}

export function mathElement(
  tag: string,
  ...children: readonly (MathElement | string)[]
): MathElement {
  return { tag, children };
}

const row = (...children: readonly (MathElement | string)[]) => mathElement('mrow', ...children);
const operator = (sign: string) => mathElement('mo', sign);

/** Words in upright letters: a name of several letters is no product. */
export function mathWords(words: string): MathElement {
  return { tag: 'mi', attributes: { mathvariant: 'normal' }, children: [words] };
}

/** A number with its unit, kept together. */
export function mathQuantity(digits: string, unit: string): MathElement {
  const number = mathElement('mn', digits.replace('-', '−'));
  if (unit === '') return number;
  const raised = unit.replace('^2', '²').replace('^3', '³');
  return row(number, mathElement('mtext', /^[°'"′″]/.test(raised) ? raised : `\u00a0${raised}`));
}

/** The usual leaves: names as words, numbers as they were written. */
export const NAMED_LEAVES: MathLeaves = {
  name: (node) =>
    mathWords(
      (node.type === 'name' ? node.name : `${node.owner.name} ${node.field}`).replaceAll('_', ' '),
    ),
  quantity: (node) => mathQuantity(node.digits, node.unit),
};

/** Writes a formula as MathML: fractions built up, powers raised, roots drawn. */
export function printMath(tree: Expression, leaves: MathLeaves = NAMED_LEAVES): MathElement {
  switch (tree.type) {
    case 'quantity':
      return leaves.quantity(tree);
    case 'text':
      return mathElement('mtext', `“${tree.value}”`);
    case 'truth':
      return mathElement('mtext', `${tree.value}`);
    case 'name':
      return tree.name === 'pi' ? mathElement('mi', 'π') : leaves.name(tree);
    case 'field':
      return leaves.name(tree);
    case 'list':
      return row(operator('['), ...commas(tree.items, leaves), operator(']'));
    case 'unary':
      return row(
        operator(tree.operator === '-' ? '−' : 'not'),
        within(tree.operand, bindingOf(tree), leaves),
      );
    case 'binary':
      return printBinary(tree, leaves);
    case 'if':
      return printIf(tree, leaves);
    case 'otherwise':
      return row(leaves.name(tree.name), words('otherwise'), printMath(tree.fallback, leaves));
    case 'call':
      return printCall(tree, leaves);
    default:
      return tree satisfies never;
  }
}

const SIGNS: Readonly<Record<string, string>> = {
  '-': '−',
  '*': '×',
  '<=': '≤',
  '>=': '≥',
  '<>': '≠',
};

function printBinary(tree: BinaryNode, leaves: MathLeaves): MathElement {
  const [left, right] = operandBindings(tree);
  if (tree.operator === '/') {
    return mathElement('mfrac', printMath(tree.left, leaves), printMath(tree.right, leaves));
  }
  if (tree.operator === '^') {
    const base = within(tree.left, left, leaves);
    const whole = isLeaf(tree.left) && (base.tag === 'mrow' || startsBelowZero(base));
    return mathElement('msup', whole ? bracket(base) : base, printMath(tree.right, leaves));
  }
  const sign = SIGNS[tree.operator] ?? tree.operator;
  const between = sign === 'and' || sign === 'or' ? words(sign) : operator(sign);
  const behind = within(tree.right, right, leaves);
  const isSigned = /^[-+*]$/.test(tree.operator) && startsBelowZero(behind);
  return row(within(tree.left, left, leaves), between, isSigned ? bracket(behind) : behind);
}

function isLeaf({ type }: Expression): boolean {
  return type === 'name' || type === 'field' || type === 'quantity';
}

/** Two signs in a row, or a power that seems to belong to the unit alone, cannot be read. */
function bracket(inner: MathElement): MathElement {
  return row(operator('('), inner, operator(')'));
}

/** A fraction and a root stand by themselves, whatever is in them. */
function startsBelowZero(element: MathElement | string | undefined): boolean {
  if (element === undefined || typeof element === 'string')
    return element?.startsWith('−') ?? false;
  if (element.tag === 'mfrac' || element.tag === 'msqrt') return false;
  return startsBelowZero(element.children[0]);
}

function words(text: string): MathElement {
  return mathElement('mtext', `\u00a0${text}\u00a0`);
}

/** A fraction stands by itself, so it needs no brackets inside a sum or a product. */
function within(tree: Expression, least: number, leaves: MathLeaves): MathElement {
  const inner = printMath(tree, leaves);
  const isFraction = tree.type === 'binary' && tree.operator === '/';
  if (isFraction && least < 8) return inner;
  return bindingOf(tree) < least ? bracket(inner) : inner;
}

/** Each branch on a line of its own with its condition behind it, as in a handbook. */
function printIf(tree: IfNode, leaves: MathLeaves): MathElement {
  const line = (value: Expression, when: readonly (MathElement | string)[]) =>
    mathElement(
      'mtr',
      mathElement('mtd', printMath(value, leaves)),
      mathElement('mtd', row(...when)),
    );
  const table = mathElement(
    'mtable',
    line(tree.then, [words('if'), printMath(tree.condition, leaves)]),
    line(tree.else, [words('else')]),
  );
  return row(operator('{'), table);
}

function printCall(tree: CallNode, leaves: MathLeaves): MathElement {
  const values = tree.arguments.map((argument) => argument.value);
  const [first] = values;
  if (tree.name === 'sqrt' && first !== undefined)
    return mathElement('msqrt', printMath(first, leaves));
  if (tree.name === 'abs' && first !== undefined) {
    return row(operator('|'), printMath(first, leaves), operator('|'));
  }
  const name = mathWords(tree.name.replaceAll('_', ' '));
  return row(name, operator('('), ...commas(values, leaves), operator(')'));
}

function commas(items: readonly Expression[], leaves: MathLeaves): MathElement[] {
  return items.flatMap((item, i) =>
    i === 0 ? [printMath(item, leaves)] : [operator(','), printMath(item, leaves)],
  );
}
