import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { BLOCK, compileColumns } from '../../src/language/column-code.ts';
import { compileExpression } from '../../src/language/compile.ts';
import { createContext, createMemoryOf, makeNames, readTree, workTree } from './made-formula.ts';
import { anyFormulas, NAMES } from './made-formulas.ts';

const MADE = makeNames(NAMES);
const SLOTS = Object.keys(NAMES);
const VARYING = ['gap', 'arm', 'laps', 'no_laps'] as const;
/** What the columns hold: below 0, 0, above, and numbers whose square is beyond all numbers. */
const SAMPLES = [-3, -0.5, 0, 1e-3, 0.0762, 2.5, 1e200];

/** A formula worked in blocks and sample by sample, with these names varying. */
function workBoth(source: string, varying: readonly string[]) {
  const tree = readTree(source);
  const { checked } = workTree(tree, source, MADE);
  const context = createContext(checked, MADE);
  const memory = createMemoryOf(MADE);
  const columns = SLOTS.map((name, slot) =>
    varying.includes(name)
      ? Float64Array.from({ length: BLOCK }, (_, i) => SAMPLES[(i * (slot + 1)) % SAMPLES.length]!)
      : undefined,
  );
  const run = compileColumns(tree, context, (slot) => columns[slot] !== undefined);
  const one = compileExpression(tree, context);
  return {
    isPlain: run !== undefined,
    block: run && settle(run(columns, memory)),
    oneByOne: Float64Array.from({ length: BLOCK }, (_, i) => {
      columns.forEach((column, slot) => {
        if (column !== undefined) memory.numbers[slot] = column[i]!;
      });
      return one.run(memory) as number;
    }).map(finite),
  };
}

/** An infinity is no value, as for whoever works a cell. */
const finite = (x: number) => (Number.isFinite(x) ? x : Number.NaN);
const settle = (block: Float64Array) => block.map(finite);

describe('any formula that is worked in blocks gives what it gives sample by sample', () => {
  const formulas = anyFormulas();
  test.each(['plain', 'length', 'area', 'time', 'angle'] as const)('%s', (kind) => {
    fc.assert(
      fc.property(formulas[kind], fc.subarray([...VARYING]), (source, varying) => {
        const { checked } = workTree(readTree(source), source, MADE);
        if (checked.kind === undefined) return;
        const { isPlain, block, oneByOne } = workBoth(source, varying);
        if (isPlain) expect({ source, block }).toEqual({ source, block: oneByOne });
      }),
      { numRuns: 150 },
    );
  });
});

test.each([
  ['gap + arm'],
  ['2 * gap'],
  ['gap / 2 - arm'],
  ['1 / laps'],
  ['laps / (1e300 * 1e300)'],
  ['laps ^ 2 ^ no_laps'],
  ['-gap * pi'],
  ['sqrt(laps) + 3'],
  ['3 in + 1 mm'],
  ['lost_gap + gap'],
])('%s is plain arithmetic and worked in blocks', (source) => {
  const { block, oneByOne } = workBoth(source, VARYING);
  expect(block).toEqual(oneByOne);
});

test.each([
  ['a branch', 'if laps > 1 then gap else arm'],
  ['a fallback', 'blank_gap otherwise gap'],
  ['a list on the way', 'sum(shims) + gap'],
  ['a function of two numbers', 'round(gap, 1 mm)'],
  ['a function of whole values', 'max(gap, arm)'],
  ['a column of a row', 'spring.length + gap'],
  ['a list', '[gap, arm]'],
  ['a truth', 'gap < arm'],
])('%s is left to be worked sample by sample', (_, source) => {
  expect(workBoth(source, VARYING).isPlain).toBe(false);
});

test('what does not vary fills the whole block', () => {
  const { block } = workBoth('2 * laps', []);
  expect(new Set(block)).toEqual(new Set([5]));
  expect(block).toHaveLength(BLOCK);
});

test('an overflow in a block cannot vanish in a later division', () => {
  const { block } = workBoth('1 / (laps * laps)', ['laps']);
  expect(block!.filter(Number.isNaN).length).toBeGreaterThan(0);
  expect(block).not.toContain(Number.POSITIVE_INFINITY);
});
