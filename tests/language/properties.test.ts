import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isThere } from '../../src/language/compile-call.ts';
import { type Kind, nameKind } from '../../src/language/kind.ts';
import { parseExpression } from '../../src/language/parse.ts';
import { printText } from '../../src/language/print-text.ts';
import type { Expression } from '../../src/language/tree.ts';
import { type Dimension, NONE } from '../../src/units/dimension.ts';
import { type Made, makeFormula, makeNames, readTree, workTree } from './made-formula.ts';
import { anyFormulas, NAMES } from './made-formulas.ts';
import { anyTree, withoutPlaces } from './made-trees.ts';
import { evaluateNaively } from './naive-evaluate.ts';

/** What every formula of a kind must hold; a failing one is printed as source to paste. */
function holds(arbitrary: fc.Arbitrary<string>, predicate: (source: string) => void): void {
  fc.assert(fc.property(arbitrary, predicate), { numRuns: 400 });
}

const FORMULAS = anyFormulas();

const KINDS: readonly (readonly [keyof typeof FORMULAS, string])[] = [
  ['plain', 'plain number'],
  ['length', 'length'],
  ['area', 'area'],
  ['time', 'time'],
  ['angle', 'angle'],
  ['truth', 'true or false'],
  ['text', 'text'],
  ['lengths', 'list of length'],
  ['plains', 'list of plain number'],
  ['texts', 'list of text'],
];

test('a printed tree reads back as the same tree', () => {
  fc.assert(
    fc.property(anyTree(), (tree) => {
      const source = printText(tree);
      expect({ source, tree: withoutPlaces(parseExpression(source, 'sheet')) }).toEqual({
        source,
        tree: withoutPlaces(tree),
      });
    }),
    { numRuns: 2000 },
  );
});

test('what was printed prints the same again', () => {
  fc.assert(
    fc.property(anyTree(), (tree) => {
      const source = printText(tree);
      expect(printText(readTree(source))).toBe(source);
    }),
    { numRuns: 500 },
  );
});

test('the place of each part encloses the text that reads as that part', () => {
  fc.assert(
    fc.property(anyTree(), (tree) => {
      const source = printText(tree);
      const read = readTree(source);
      const again = readTree(source.slice(read.from, read.to));
      expect({ source, tree: withoutPlaces(again) }).toEqual({ source, tree: withoutPlaces(read) });
    }),
    { numRuns: 500 },
  );
});

describe.each(KINDS)('any formula made to be %s', (key, name) => {
  test('is checked as such, or its lists are found to be of unequal length', () => {
    holds(FORMULAS[key], (source) => {
      const { checked } = makeFormula(source, NAMES);
      const found = checked.problems[0]?.code ?? nameKind(checked.kind!);
      expect([name, 'list-length']).toContain(found);
    });
  });

  test('is worked to a value of that kind, or to none and a sentence why', () => {
    holds(FORMULAS[key], (source) => {
      const { checked, value, problem } = makeFormula(source, NAMES);
      if (checked.kind === undefined) return;
      expect({ source, fits: problem === undefined && fits(value, checked.kind) }).toEqual({
        source,
        fits: problem === undefined,
      });
      if (problem !== undefined) expectTold(problem.message, value);
    });
  });

  test('is worked as a plain reading of its tree would work it', () => {
    holds(FORMULAS[key], (source) => {
      const made = makeFormula(source, NAMES);
      if (made.checked.kind === undefined) return;
      const naive = evaluateNaively(made.tree, makeNames(NAMES));
      expect({ source, value: isThere(naive) ? naive : undefined }).toEqual({
        source,
        value: made.value,
      });
    });
  });
});

function expectTold(message: string, value: unknown): void {
  expect(value).toBeUndefined();
  expect(message.length).toBeGreaterThan(0);
  expect(message).not.toMatch(/undefined|NaN|\[object|has a value/);
}

function fits(value: unknown, kind: Kind): boolean {
  switch (kind.type) {
    case 'quantity':
      return Number.isFinite(value);
    case 'truth':
      return value === 0 || value === 1;
    case 'list':
      return value instanceof Float64Array && (kind.length ?? value.length) === value.length;
    case 'text':
      return typeof value === 'string';
    case 'texts':
      return Array.isArray(value) && value.every((item) => typeof item === 'string');
    default:
      return false;
  }
}

describe('when all base units are made smaller, each value grows by its dimension', () => {
  // Powers of four, so that binary numbers and their square roots stay exact. Angles stay as they
  // are: a sine is no ratio of angles.
  const FACTORS: Dimension = [4, 16, 64, 1];
  const growth = (dimension: Dimension) =>
    dimension.reduce((product, exponent, i) => product * FACTORS[i]! ** exponent, 1);

  test.each(['length', 'area', 'time', 'plain', 'lengths'] as const)('%s', (key) => {
    holds(FORMULAS[key], (source) => {
      const made = makeFormula(source, NAMES);
      const { kind } = made.checked;
      if (made.problem !== undefined || kind === undefined) return;
      const scaled = workTree(scaleTree(made.tree, growth), source, scaleNames(growth));
      const by = growth('dimension' in kind ? kind.dimension : NONE);
      expect({ source, value: scaled.value }).toEqual({ source, value: scale(made.value, by) });
    });
  });
});

function scale(value: unknown, by: number): unknown {
  if (typeof value === 'number') return value * by;
  return value instanceof Float64Array ? value.map((x) => x * by) : value;
}

type Growth = (dimension: Dimension) => number;

function scaleTree(tree: Expression, growth: Growth): Expression {
  if (tree.type === 'quantity') return { ...tree, value: tree.value * growth(tree.dimension) };
  const parts = Object.entries(tree).map(([key, value]) => [key, scalePart(value, growth)]);
  return Object.fromEntries(parts) as Expression;
}

function scalePart(value: unknown, growth: Growth): unknown {
  if (Array.isArray(value)) return value.map((item) => scalePart(item, growth));
  if (typeof value !== 'object' || value === null) return value;
  return 'type' in value
    ? scaleTree(value as Expression, growth)
    : { ...value, value: scalePart((value as { value: unknown }).value, growth) };
}

function scaleNames(growth: Growth): Made {
  return new Map(
    [...makeNames(NAMES)].map(([name, made]) => {
      const value = scaleValue(made.value, made.kind, growth);
      return [name, { ...made, value }] as const;
    }),
  ) as Made;
}

function scaleValue(value: unknown, kind: Kind, growth: Growth): unknown {
  if ('dimension' in kind) return scale(value, growth(kind.dimension));
  if (kind.type === 'row') {
    const { key, cells } = value as { key: string; cells: ReadonlyMap<string, unknown> };
    const scaled = [...cells].map(
      ([name, cell]) => [name, scaleValue(cell, kind.columns.get(name)!, growth)] as const,
    );
    return { key, cells: new Map(scaled) };
  }
  if (kind.type !== 'table') return value;
  return (value as readonly unknown[]).map((row) =>
    scaleValue(row, { type: 'row', columns: kind.columns }, growth),
  );
}
