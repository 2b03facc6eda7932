import { type Cursor, createCursor, type Mode, ReadFault, type Token } from './cursor.ts';
import { inferName, isName } from './names.ts';
import { fail, type Problem, type Span } from './problem.ts';
import type { Details, ProblemCode } from './problem-codes.ts';
import type { Argument, BinaryNode, Expression, NameNode } from './tree.ts';

/** Brackets, signs and branches inside one another: beyond it lies a slip, not a formula. */
const DEEPEST = 100;
/** Parts of one formula; keeps every walk over a tree far from the end of the stack. */
const LONGEST = 1000;

/**
 * Reads a whole text as one expression.
 *
 * Precedence, loosest first: `otherwise`; `or`; `and`; `not`; one comparison; `+ -`; `* /`; unary
 * minus; `^` (right to left); a number with its unit, a call, a field, brackets.
 *
 * @returns the tree, its offsets counted in `source`; or the first fault
 */
export function parseExpression(source: string, mode: Mode): Expression | Problem {
  const cursor = createCursor(source, mode);
  try {
    const tree = readExpression(cursor);
    const after = cursor.peek();
    return after.type === 'end' ? tree : unexpected(after, 'an operator or the end').problem;
  } catch (fault) {
    if (fault instanceof ReadFault) return fault.problem;
    throw fault;
  }
}

/** Reads as much as belongs to one expression and leaves the cursor behind it. Throws a ReadFault. */
export function readExpression(cursor: Cursor): Expression {
  return createReader(cursor).expression();
}

/** Reads a sum only: stops before `and`, `to`, a comparison, so that those words can join two of them. */
export function readOperand(cursor: Cursor): Expression {
  return createReader(cursor).sum();
}

/** The fault of finding one token where another was expected. */
export function unexpected(token: Token, expected: string): ReadFault {
  if (token.type === 'end') return fault('unexpected-end', token, { expected });
  return fault('unexpected-word', token, { found: describe(token), expected });
}

/** A fault that ends the reading. */
export function fault<C extends ProblemCode>(code: C, where: Span, details: Details<C>): ReadFault {
  return new ReadFault(fail(code, where, details));
}

function describe(token: Exclude<Token, { type: 'end' }>): string {
  if (token.type === 'quantity') return `the number ${token.digits}`;
  return token.type === 'text' ? `the text "${token.value}"` : `"${token.text}"`;
}

function createReader(cursor: Cursor) {
  let depth = 0;
  let parts = 0;

  /** Every step inward passes here, so that no text can exhaust the stack. */
  function deeper<T>(read: () => T): T {
    depth += 1;
    if (depth > DEEPEST) throw fault('too-deep', cursor.peek(), { limit: DEEPEST });
    const result = read();
    depth -= 1;
    return result;
  }

  function maybeSymbol(...symbols: readonly string[]): string | undefined {
    const token = cursor.peek();
    if (token.type !== 'symbol' || !symbols.includes(token.text)) return undefined;
    cursor.take();
    return token.text;
  }

  function maybeWord(word: string): Span | undefined {
    const token = cursor.peek();
    return token.type === 'word' && token.text === word ? cursor.take() : undefined;
  }

  function expectSymbol(symbol: string, what: string): Span {
    const token = cursor.peek();
    if (token.type !== 'symbol' || token.text !== symbol) throw unexpected(token, what);
    return cursor.take();
  }

  function expectWord(word: string): void {
    if (maybeWord(word) === undefined) throw unexpected(cursor.peek(), `"${word}"`);
  }

  function expression(): Expression {
    const left = either();
    if (maybeWord('otherwise') === undefined) return left;
    if (left.type !== 'name' || left.name === 'pi') throw unexpectedBefore(left);
    const fallback = deeper(expression);
    return { type: 'otherwise', name: left, fallback, from: left.from, to: fallback.to };
  }

  function unexpectedBefore(left: Expression): ReadFault {
    const found = `"${cursor.source.slice(left.from, left.to)}"`;
    return fault('unexpected-word', left, {
      found,
      expected: 'the name of a given before "otherwise"',
    });
  }

  function leftToRight(
    operand: () => Expression,
    maybeOperator: () => BinaryNode['operator'] | undefined,
  ): Expression {
    let left = operand();
    for (let operator = maybeOperator(); operator !== undefined; operator = maybeOperator()) {
      left = binary(operator, left, operand());
    }
    return left;
  }

  function binary(
    operator: BinaryNode['operator'],
    left: Expression,
    right: Expression,
  ): Expression {
    return { type: 'binary', operator, left, right, from: left.from, to: right.to };
  }

  const either = () => leftToRight(both, () => (maybeWord('or') ? 'or' : undefined));
  const both = () => leftToRight(negation, () => (maybeWord('and') ? 'and' : undefined));

  function negation(): Expression {
    const sign = maybeWord('not');
    if (sign === undefined) return comparison();
    const operand = deeper(negation);
    return { type: 'unary', operator: 'not', operand, from: sign.from, to: operand.to };
  }

  const maybeComparison = () =>
    maybeSymbol('<', '<=', '>', '>=', '=', '<>') as BinaryNode['operator'] | undefined;

  function comparison(): Expression {
    const left = sum();
    const operator = maybeComparison();
    if (operator === undefined) return left;
    const tree = binary(operator, left, sum());
    const next = cursor.peek();
    if (maybeComparison() !== undefined) throw fault('chained-comparison', next, undefined);
    return tree;
  }

  const sum = () => leftToRight(product, () => maybeSymbol('+', '-') as '+' | '-' | undefined);
  const product = () => leftToRight(signed, () => maybeSymbol('*', '/') as '*' | '/' | undefined);

  function signed(): Expression {
    const sign = cursor.peek();
    if (maybeSymbol('+') !== undefined) return deeper(signed);
    if (maybeSymbol('-') === undefined) return power();
    const operand = deeper(signed);
    return { type: 'unary', operator: '-', operand, from: sign.from, to: operand.to };
  }

  function power(): Expression {
    const base = primary();
    return maybeSymbol('^') === undefined ? base : binary('^', base, deeper(signed));
  }

  function primary(): Expression {
    parts += 1;
    if (parts > LONGEST) throw fault('too-long', cursor.peek(), { limit: LONGEST });
    const token = cursor.peek();
    switch (token.type) {
      case 'quantity':
        return quantity();
      case 'text':
        cursor.take();
        return { type: 'text', value: token.value, from: token.from, to: token.to };
      case 'word':
        return word(token.text);
      case 'symbol':
        return bracketed();
      default:
        throw unexpected(token, 'a value');
    }
  }

  function quantity(): Expression {
    const token = cursor.take() as Extract<Token, { type: 'quantity' }>;
    const { value, dimension, digits, from, to } = token;
    return { type: 'quantity', value, dimension, digits, unit: token.unit?.symbol ?? '', from, to };
  }

  function bracketed(): Expression {
    const open = cursor.peek();
    if (maybeSymbol('(') !== undefined) {
      const inner = deeper(expression);
      const close = expectSymbol(')', 'a closing bracket ")"');
      return { ...inner, from: open.from, to: close.to };
    }
    if (maybeSymbol('[') !== undefined) return list(open.from);
    throw unexpected(open, 'a value');
  }

  function list(from: number): Expression {
    const items = separated(']', expression);
    return { type: 'list', items, from, to: expectSymbol(']', 'a comma or "]"').to };
  }

  function separated<T>(close: string, read: () => T): T[] {
    const found: T[] = [];
    const token = cursor.peek();
    if (token.type === 'symbol' && token.text === close) return found;
    do found.push(deeper(read));
    while (maybeSymbol(',') !== undefined);
    return found;
  }

  function word(text: string): Expression {
    const token = cursor.take();
    if (cursor.mode === 'entry') {
      throw fault('name-in-entry', token, { name: text, example: '3.212 or 3 1/8 in' });
    }
    if (text === 'true' || text === 'false') {
      return { type: 'truth', value: text === 'true', from: token.from, to: token.to };
    }
    if (text === 'if') return branches(token.from);
    return named(text, token);
  }

  function branches(from: number): Expression {
    const condition = deeper(expression);
    expectWord('then');
    const then = deeper(expression);
    expectWord('else');
    const otherwise = deeper(expression);
    return { type: 'if', condition, then, else: otherwise, from, to: otherwise.to };
  }

  function named(text: string, token: Span): Expression {
    if (!isName(text)) throw fault('misspelt-name', token, { name: text, cure: inferName(text) });
    if (maybeSymbol('(') !== undefined) return call(text, token.from);
    const name: NameNode = { type: 'name', name: text, from: token.from, to: token.to };
    if (maybeSymbol('.') === undefined) return name;
    const field = cursor.take();
    if (field.type !== 'word') throw unexpected(field, `a column of ${text}`);
    return { type: 'field', owner: name, field: field.text, from: name.from, to: field.to };
  }

  function call(name: string, from: number): Expression {
    const found = separated(')', argument);
    const close = expectSymbol(')', 'a comma or ")"');
    return { type: 'call', name, arguments: found, from, to: close.to };
  }

  function argument(): Argument {
    const value = expression();
    if (value.type !== 'name' || maybeSymbol(':') === undefined) {
      return { value, from: value.from, to: value.to };
    }
    const named = expression();
    return { name: value.name, value: named, from: value.from, to: named.to };
  }

  return { expression, sum };
}
