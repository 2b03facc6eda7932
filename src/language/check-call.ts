import {
  type Dimension,
  equalDimensions,
  isNone,
  NONE,
  nameDimension,
} from '../units/dimension.ts';
import { nearest } from '../units/nearest.ts';
import { type Matched, matchArguments } from './arguments.ts';
import type { Checker } from './checker.ts';
import type { Bound, FunctionDeclaration, Letter, Parameter } from './functions/declaration.ts';
import { type Kind, nameKind } from './kind.ts';
import type { CallNode } from './tree.ts';

const SHAPES: Readonly<Record<Parameter['shape'], string>> = {
  quantity: 'one quantity',
  list: 'a list of quantities',
  either: 'a quantity or a list of them',
  sequence: 'a list',
  text: 'a text',
};

/** Kind of a call: arguments matched by place or name, shapes and dimensions checked. */
export function checkCall(node: CallNode, checker: Checker): Kind | undefined {
  const declaration = checker.scope.functions.get(node.name);
  if (declaration === undefined) {
    const near = nearest(node.name, [...checker.scope.functions.keys()]);
    return checker.report('unknown-function', node, { name: node.name, near });
  }
  const matched = matchArguments(declaration, node);
  if ('code' in matched) return checker.add(matched);
  return checkMatched(node, declaration, matched, checker);
}

function checkMatched(
  node: CallNode,
  declaration: FunctionDeclaration,
  matched: readonly Matched[],
  checker: Checker,
): Kind | undefined {
  const kinds = matched.map(({ value }) =>
    value === undefined ? undefined : checker.kindOf(value),
  );
  const bound: Partial<Record<Letter, Dimension>> = {};
  for (const [i, { parameter, value }] of matched.entries()) {
    if (value === undefined) {
      if (!bindFallback(node, parameter, matched[0]!, kinds[0], bound, checker)) return undefined;
    } else if (kinds[i] === undefined) return undefined;
    else if (!checkArgument(node, parameter, value, kinds[i], bound, checker)) return undefined;
  }
  return resultKind(node, declaration, { matched, kinds, bound }, checker);
}

/**
 * An argument left out stands for a plain number: rounding 2.6 mm to 1 would mean 1 m. Mutates
 * `bound`.
 */
function bindFallback(
  node: CallNode,
  parameter: Parameter,
  first: Matched,
  kind: Kind | undefined,
  bound: Partial<Record<Letter, Dimension>>,
  checker: Checker,
): boolean {
  const { dimension, name } = parameter;
  if (typeof dimension !== 'string') return true;
  bound[dimension] ??= NONE;
  if (isNone(bound[dimension])) return true;
  checker.report('wrong-dimension', node, {
    where: `${node.name} without its ${name}`,
    expected: 'a plain number',
    found: checker.describe(first.value!, kind!),
  });
  return false;
}

/** Mutates `bound` when a letter is met for the first time. */
function checkArgument(
  node: CallNode,
  parameter: Parameter,
  value: Matched['value'] & {},
  kind: Kind,
  bound: Partial<Record<Letter, Dimension>>,
  checker: Checker,
): boolean {
  const where = `${parameter.name} of ${node.name}`;
  if (!fits(parameter.shape, kind)) {
    checker.report('wrong-kind', value, {
      found: nameKind(kind),
      expected: SHAPES[parameter.shape],
      where,
    });
    return false;
  }
  if (!('dimension' in kind)) return true;
  // An empty list has no dimension of its own: it fits anywhere.
  if (isEmpty(kind)) return true;
  const wanted = wantedDimension(parameter, kind.dimension, bound);
  if (equalDimensions(wanted, kind.dimension)) return true;
  checker.report('wrong-dimension', value, {
    where,
    expected: nameDimension(wanted),
    found: checker.describe(value, kind),
  });
  return false;
}

function isEmpty(kind: Kind): boolean {
  return kind.type === 'list' && kind.length === 0;
}

function wantedDimension(
  parameter: Parameter,
  found: Dimension,
  bound: Partial<Record<Letter, Dimension>>,
): Dimension {
  const { dimension } = parameter;
  if (typeof dimension !== 'string') return dimension ?? NONE;
  bound[dimension] ??= found;
  return bound[dimension];
}

function fits(shape: Parameter['shape'], kind: Kind): boolean {
  switch (shape) {
    case 'quantity':
      return kind.type === 'quantity';
    case 'list':
      return kind.type === 'list';
    case 'either':
      return kind.type === 'quantity' || kind.type === 'list';
    case 'sequence':
      return kind.type === 'list' || kind.type === 'texts';
    case 'text':
      return kind.type === 'text';
    default:
      return shape satisfies never;
  }
}

interface Given {
  readonly matched: readonly Matched[];
  readonly kinds: readonly (Kind | undefined)[];
  readonly bound: Bound;
}

function resultKind(
  node: CallNode,
  { result }: FunctionDeclaration,
  given: Given,
  checker: Checker,
): Kind | undefined {
  const dimension = resolve(result.dimension, given.bound);
  const ofTexts = given.kinds[0]?.type === 'texts';
  switch (result.shape) {
    case 'quantity':
      return { type: 'quantity', dimension };
    case 'list':
      return { type: 'list', dimension };
    case 'texts':
      return { type: 'texts' };
    case 'element':
      return ofTexts ? { type: 'text' } : { type: 'quantity', dimension };
    case 'sequence':
      return ofTexts ? { type: 'texts' } : { type: 'list', dimension };
    case 'lifted':
      return lifted(node, dimension, given, checker);
    default:
      return result.shape satisfies never;
  }
}

/** A list where a parameter that takes either was given one; such lists must be equally long. */
function lifted(
  node: CallNode,
  dimension: Dimension,
  { matched, kinds }: Given,
  checker: Checker,
): Kind | undefined {
  const lists = kinds.filter(
    (kind, i) => matched[i]!.parameter.shape === 'either' && kind?.type === 'list',
  );
  if (lists.length === 0) return { type: 'quantity', dimension };
  const [length, other] = new Set(
    lists.flatMap((kind) =>
      kind?.type === 'list' && kind.length !== undefined ? [kind.length] : [],
    ),
  );
  if (other !== undefined) {
    return checker.report('list-length', node, { left: `${length} elements`, right: `${other}` });
  }
  return { type: 'list', dimension, ...(length === undefined ? {} : { length }) };
}

function resolve(dimension: FunctionDeclaration['result']['dimension'], bound: Bound): Dimension {
  if (typeof dimension === 'function') return dimension(bound);
  if (typeof dimension === 'string') return bound[dimension] ?? NONE;
  return dimension ?? NONE;
}
