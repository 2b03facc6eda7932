import { bindingOf, operandBindings } from './precedence.ts';
import type { CallNode, Expression } from './tree.ts';

/** Writes a tree as source text that reads back as the same tree; brackets only where needed. */
export function printText(tree: Expression): string {
  switch (tree.type) {
    case 'quantity':
      return tree.unit === '' ? tree.digits : `${tree.digits} ${tree.unit}`;
    case 'text':
      return `"${tree.value}"`;
    case 'truth':
      return `${tree.value}`;
    case 'name':
      return tree.name;
    case 'field':
      return `${tree.owner.name}.${tree.field}`;
    case 'list':
      return `[${tree.items.map(printText).join(', ')}]`;
    case 'unary':
      return `${tree.operator === '-' ? '-' : 'not '}${within(tree.operand, bindingOf(tree))}`;
    case 'binary': {
      const [left, right] = operandBindings(tree);
      return `${within(tree.left, left)} ${tree.operator} ${within(tree.right, right)}`;
    }
    case 'if':
      return `if ${printText(tree.condition)} then ${printText(tree.then)} else ${printText(tree.else)}`;
    case 'otherwise':
      return `${tree.name.name} otherwise ${printText(tree.fallback)}`;
    case 'call':
      return printCall(tree);
    default:
      return tree satisfies never;
  }
}

function printCall(tree: CallNode): string {
  const given = tree.arguments.map(({ name, value }) => {
    const text = printText(value);
    return name === undefined ? text : `${name}: ${text}`;
  });
  return `${tree.name}(${given.join(', ')})`;
}

function within(tree: Expression, least: number): string {
  return bindingOf(tree) < least ? `(${printText(tree)})` : printText(tree);
}
