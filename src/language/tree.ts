import type { Dimension } from '../units/dimension.ts';
import type { Span } from './problem.ts';

/** A number as written, its unit included: `3 1/8 in`. `value` is in SI. */
export interface QuantityNode extends Span {
  readonly type: 'quantity';
  readonly value: number;
  readonly dimension: Dimension;
  /** As written, without the unit: `3 1/8`. */
  readonly digits: string;
  /** Canonical symbol of the unit, '' for a plain number. */
  readonly unit: string;
}

export interface TextNode extends Span {
  readonly type: 'text';
  readonly value: string;
}

export interface TruthNode extends Span {
  readonly type: 'truth';
  readonly value: boolean;
}

export interface NameNode extends Span {
  readonly type: 'name';
  readonly name: string;
}

/** One column of a table, or one field of a row: `gear_set.ratios`. */
export interface FieldNode extends Span {
  readonly type: 'field';
  readonly owner: NameNode;
  readonly field: string;
}

export interface ListNode extends Span {
  readonly type: 'list';
  readonly items: readonly Expression[];
}

export interface UnaryNode extends Span {
  readonly type: 'unary';
  readonly operator: '-' | 'not';
  readonly operand: Expression;
}

export type ArithmeticOperator = '+' | '-' | '*' | '/' | '^';
export type ComparisonOperator = '<' | '<=' | '>' | '>=' | '=' | '<>';
export type LogicOperator = 'and' | 'or';

export interface BinaryNode extends Span {
  readonly type: 'binary';
  readonly operator: ArithmeticOperator | ComparisonOperator | LogicOperator;
  readonly left: Expression;
  readonly right: Expression;
}

export interface IfNode extends Span {
  readonly type: 'if';
  readonly condition: Expression;
  readonly then: Expression;
  readonly else: Expression;
}

/** `measured otherwise computed`: the right side when the named value was left blank. */
export interface OtherwiseNode extends Span {
  readonly type: 'otherwise';
  readonly name: NameNode;
  readonly fallback: Expression;
}

export interface Argument extends Span {
  /** The parameter's name where it was written, as in `interpolate(at: speed, …)`. */
  readonly name?: string;
  readonly value: Expression;
}

export interface CallNode extends Span {
  readonly type: 'call';
  readonly name: string;
  readonly arguments: readonly Argument[];
}

export type Expression =
  | QuantityNode
  | TextNode
  | TruthNode
  | NameNode
  | FieldNode
  | ListNode
  | UnaryNode
  | BinaryNode
  | IfNode
  | OtherwiseNode
  | CallNode;
