import {
  type Dimension,
  divideDimensions,
  equalDimensions,
  isNone,
  multiplyDimensions,
  NONE,
  raiseDimension,
} from '../units/dimension.ts';
import { nearest } from '../units/nearest.ts';
import { checkCall } from './check-call.ts';
import type { Checker, Scope } from './checker.ts';
import { maybeConstant } from './constant.ts';
import { type Kind, nameKind } from './kind.ts';
import { fail, type Problem, type Span } from './problem.ts';
import type {
  BinaryNode,
  Expression,
  FieldNode,
  IfNode,
  ListNode,
  NameNode,
  OtherwiseNode,
  UnaryNode,
} from './tree.ts';
import { unifyKinds } from './unify.ts';

export interface Checked {
  /** Undefined where a problem left no kind. */
  readonly kind: Kind | undefined;
  readonly problems: readonly Problem[];
  /** Kind of every part that has one. */
  readonly kinds: ReadonlyMap<Expression, Kind>;
}

/**
 * Checks names, kinds, dimensions and list lengths of a formula before anything is computed.
 *
 * @param source the text that the tree's offsets count in, for quoting
 */
export function checkExpression(tree: Expression, scope: Scope, source: string): Checked {
  const problems: Problem[] = [];
  const kinds = new Map<Expression, Kind>();
  const checker: Checker = {
    scope,
    kindOf(node) {
      const kind = inferKind(node, checker);
      if (kind !== undefined) kinds.set(node, kind);
      return kind;
    },
    report: (code, where, details) => checker.add(fail(code, where, details)),
    add(problem) {
      problems.push(problem);
      return undefined;
    },
    describe: (node, kind) => `${shorten(source.slice(node.from, node.to))} (${nameKind(kind)})`,
  };
  const kind = checker.kindOf(tree);
  return { kind, problems, kinds };
}

function shorten(text: string): string {
  const line = text.replaceAll(/\s+/g, ' ');
  return line.length > 40 ? `${line.slice(0, 37)}…` : line;
}

function inferKind(node: Expression, checker: Checker): Kind | undefined {
  switch (node.type) {
    case 'quantity':
      return { type: 'quantity', dimension: node.dimension };
    case 'text':
      return { type: 'text' };
    case 'truth':
      return { type: 'truth' };
    case 'name':
      return kindOfName(node, checker);
    case 'field':
      return kindOfField(node, checker);
    case 'list':
      return kindOfList(node, checker);
    case 'unary':
      return kindOfUnary(node, checker);
    case 'binary':
      return kindOfBinary(node, checker);
    case 'if':
      return kindOfIf(node, checker);
    case 'otherwise':
      return kindOfOtherwise(node, checker);
    case 'call':
      return checkCall(node, checker);
    default:
      return node satisfies never;
  }
}

function kindOfName(node: NameNode, { scope, report }: Checker): Kind | undefined {
  if (node.name === 'pi') return { type: 'quantity', dimension: NONE };
  const found = scope.lookUp(node.name);
  if (found !== undefined) return found.kind;
  return report('unknown-name', node, { name: node.name, near: nearest(node.name, scope.names()) });
}

function kindOfField(node: FieldNode, checker: Checker): Kind | undefined {
  const owner = checker.kindOf(node.owner);
  if (owner === undefined) return undefined;
  if (owner.type !== 'row' && owner.type !== 'table') {
    const where = `"${node.owner.name}.${node.field}"`;
    return checker.report('wrong-kind', node, {
      found: nameKind(owner),
      expected: 'a table or a table row',
      where,
    });
  }
  const column = owner.columns.get(node.field);
  if (column === undefined) {
    const near = nearest(node.field, [...owner.columns.keys()]);
    return checker.report('unknown-field', node, {
      owner: node.owner.name,
      field: node.field,
      near,
    });
  }
  return owner.type === 'row' ? column : kindOfColumn(column, node, checker);
}

function kindOfColumn(column: Kind, node: FieldNode, { report }: Checker): Kind | undefined {
  if (column.type === 'quantity') return { type: 'list', dimension: column.dimension };
  if (column.type === 'text') return { type: 'texts' };
  const where = `"${node.owner.name}.${node.field}"`;
  return report('wrong-kind', node, {
    found: 'a list in each row',
    expected: 'a column of single values; pick a row first',
    where,
  });
}

function kindOfList(node: ListNode, checker: Checker): Kind | undefined {
  const kinds = node.items.map((item) => checker.kindOf(item));
  const first = kinds[0];
  if (node.items.length === 0) return { type: 'list', dimension: NONE, length: 0 };
  if (kinds.some((kind) => kind === undefined) || first === undefined) return undefined;
  for (const [i, kind] of kinds.entries()) {
    if (unifyKinds(first, kind!) === undefined) {
      const left = checker.describe(node.items[i]!, kind!);
      const right = checker.describe(node.items[0]!, first);
      return checker.report('dimension-mismatch', node.items[i]!, {
        action: 'list together',
        left,
        right,
      });
    }
  }
  const length = node.items.length;
  if (first.type === 'quantity') return { type: 'list', dimension: first.dimension, length };
  if (first.type === 'text') return { type: 'texts', length };
  return checker.report('wrong-kind', node, {
    found: nameKind(first),
    expected: 'quantities or texts',
    where: 'a list',
  });
}

function kindOfUnary(node: UnaryNode, checker: Checker): Kind | undefined {
  const kind = checker.kindOf(node.operand);
  if (kind === undefined) return undefined;
  if (node.operator === 'not') return expectTruth(node.operand, kind, '"not"', checker);
  if (kind.type === 'quantity' || kind.type === 'list') return kind;
  return checker.report('wrong-kind', node.operand, {
    found: nameKind(kind),
    expected: 'a quantity',
    where: 'a minus sign',
  });
}

function expectTruth(
  node: Expression,
  kind: Kind,
  where: string,
  { report }: Checker,
): Kind | undefined {
  if (kind.type === 'truth') return kind;
  return report('wrong-kind', node, {
    found: nameKind(kind),
    expected: 'a comparison such as gap > 2 mm',
    where,
  });
}

function kindOfBinary(node: BinaryNode, checker: Checker): Kind | undefined {
  const left = checker.kindOf(node.left);
  const right = checker.kindOf(node.right);
  if (left === undefined || right === undefined) return undefined;
  switch (node.operator) {
    case 'and':
    case 'or': {
      const truths = [
        expectTruth(node.left, left, `"${node.operator}"`, checker),
        expectTruth(node.right, right, `"${node.operator}"`, checker),
      ];
      return truths.includes(undefined) ? undefined : left;
    }
    case '<':
    case '<=':
    case '>':
    case '>=':
    case '=':
    case '<>':
      return kindOfComparison(node, left, right, checker);
    default:
      return kindOfArithmetic(node, left, right, checker);
  }
}

function kindOfComparison(
  node: BinaryNode,
  left: Kind,
  right: Kind,
  checker: Checker,
): Kind | undefined {
  const texts = left.type === 'text' && right.type === 'text';
  if (texts && (node.operator === '=' || node.operator === '<>')) return { type: 'truth' };
  for (const [side, kind] of [
    [node.left, left],
    [node.right, right],
  ] as const) {
    if (kind.type !== 'quantity') {
      const where = `"${node.operator}"`;
      return checker.report('wrong-kind', side, {
        found: nameKind(kind),
        expected: 'one quantity on each side',
        where,
      });
    }
  }
  if (!sameDimension(left, right)) return mismatch('compare', node, left, right, checker);
  return { type: 'truth' };
}

type Numeric = Extract<Kind, { dimension: Dimension }>;

function kindOfArithmetic(
  node: BinaryNode,
  left: Kind,
  right: Kind,
  checker: Checker,
): Kind | undefined {
  const where = `"${node.operator}"`;
  for (const [side, kind] of [
    [node.left, left],
    [node.right, right],
  ] as const) {
    if (kind.type !== 'quantity' && kind.type !== 'list') {
      return checker.report('wrong-kind', side, {
        found: nameKind(kind),
        expected: 'quantities or lists of them',
        where,
      });
    }
  }
  const dimension = dimensionOf(node, left as Numeric, right as Numeric, checker);
  return dimension && shaped(node, left as Numeric, right as Numeric, dimension, checker);
}

function dimensionOf(
  node: BinaryNode,
  left: Numeric,
  right: Numeric,
  checker: Checker,
): Dimension | undefined {
  switch (node.operator) {
    case '+':
      return sameDimension(left, right)
        ? left.dimension
        : mismatch('add', node, left, right, checker);
    case '-':
      return sameDimension(left, right)
        ? left.dimension
        : mismatch('subtract', node, left, right, checker);
    case '*':
      return multiplyDimensions(left.dimension, right.dimension);
    case '/':
      return divideDimensions(left.dimension, right.dimension);
    default:
      return dimensionOfPower(node, left, right, checker);
  }
}

function dimensionOfPower(
  node: BinaryNode,
  left: Numeric,
  right: Numeric,
  checker: Checker,
): Dimension | undefined {
  if (!isNone(right.dimension)) {
    return checker.report('exponent-not-plain', node.right, {
      found: checker.describe(node.right, right),
    });
  }
  if (isNone(left.dimension)) return NONE;
  const exponent = maybeConstant(node.right);
  if (exponent !== undefined) return raiseDimension(left.dimension, exponent);
  return checker.report('exponent-not-constant', node.right, {
    base: checker.describe(node.left, left),
  });
}

/** A list where either side is one; two lists must be equally long. */
function shaped(
  node: BinaryNode,
  left: Numeric,
  right: Numeric,
  dimension: Dimension,
  checker: Checker,
): Kind | undefined {
  if (left.type === 'quantity' && right.type === 'quantity') return { type: 'quantity', dimension };
  const lengths = [left, right].flatMap((kind) => (kind.type === 'list' ? [kind.length] : []));
  const known = lengths.filter((length) => length !== undefined);
  if (known.length === 2 && known[0] !== known[1]) {
    return checker.report('list-length', node, {
      left: `${known[0]} elements`,
      right: `${known[1]}`,
    });
  }
  return { type: 'list', dimension, ...(known[0] === undefined ? {} : { length: known[0] }) };
}

function sameDimension(left: Kind, right: Kind): boolean {
  return equalDimensions((left as Numeric).dimension, (right as Numeric).dimension);
}

function mismatch(
  action: 'add' | 'subtract' | 'compare',
  node: BinaryNode,
  left: Kind,
  right: Kind,
  checker: Checker,
): undefined {
  const sides = [checker.describe(node.left, left), checker.describe(node.right, right)] as const;
  const [first, second] = action === 'subtract' ? [sides[1], sides[0]] : sides;
  const cure = cureFor(node, left as Numeric, right as Numeric);
  return checker.report('dimension-mismatch', node, {
    action,
    left: first,
    right: second,
    ...cure,
  });
}

function cureFor(node: BinaryNode, left: Numeric, right: Numeric): { cure?: string } {
  for (const side of [node.left, node.right]) {
    if (side.type === 'quantity' && side.unit === '')
      return { cure: `give ${side.digits} its unit` };
  }
  const apart = divideDimensions(left.dimension, right.dimension);
  const byAngleOnly = apart[0] === 0 && apart[1] === 0 && apart[2] === 0;
  return byAngleOnly
    ? { cure: 'they differ by an angle: multiply or divide by 1 rad or 1 rev' }
    : {};
}

function kindOfIf(node: IfNode, checker: Checker): Kind | undefined {
  const condition = checker.kindOf(node.condition);
  if (condition !== undefined) expectTruth(node.condition, condition, '"if"', checker);
  return branches(node, 'choose between', node.then, node.else, checker);
}

function kindOfOtherwise(node: OtherwiseNode, checker: Checker): Kind | undefined {
  return branches(node, 'choose between', node.name, node.fallback, checker);
}

function branches(
  node: Span,
  action: string,
  a: Expression,
  b: Expression,
  checker: Checker,
): Kind | undefined {
  const left = checker.kindOf(a);
  const right = checker.kindOf(b);
  if (left === undefined || right === undefined) return undefined;
  return (
    unifyKinds(left, right) ??
    checker.report('dimension-mismatch', node, {
      action,
      left: checker.describe(a, left),
      right: checker.describe(b, right),
    })
  );
}
