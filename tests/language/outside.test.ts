import { expect, test } from 'vitest';
import { checkExpression } from '../../src/language/check.ts';
import { createFunctions } from '../../src/language/functions/builtins.ts';
import { type FunctionDeclaration, never } from '../../src/language/functions/declaration.ts';
import { listOutside } from '../../src/language/outside.ts';
import { createMemoryOf, FUNCTIONS, makeNames, readTree } from './made-formula.ts';

/** Good for numbers up to a most, which is 10 where it is left out. */
const SMALL: FunctionDeclaration = {
  name: 'small',
  doc: 'The number itself.',
  parameters: [
    { name: 'value', shape: 'quantity', doc: 'a number' },
    { name: 'most', shape: 'quantity', fallback: 10, doc: 'the most' },
  ],
  result: { shape: 'quantity' },
  work: { type: 'each', run: (x) => x, refuse: never },
  outside: (x, most) => ((x as number) > (most as number) ? `${x} is too much` : undefined),
  example: ['small(1)', '1'],
};

const functions = createFunctions([...FUNCTIONS.values(), SMALL]);
const NAMES = makeNames({ low: '5', high: '20', empty: 'blank', lost: 'lost' });
const SLOTS = [...NAMES.keys()];

function outside(source: string): readonly string[] {
  const tree = readTree(source);
  const scope = {
    functions,
    lookUp: (name: string) => NAMES.get(name),
    names: () => SLOTS,
  };
  const { kinds, problems } = checkExpression(tree, scope, source);
  expect(problems).toEqual([]);
  const slotOf = (name: string) => SLOTS.indexOf(name);
  return listOutside(tree, { functions, kinds, slotOf }, createMemoryOf(NAMES));
}

test.each([
  ['a formula without such a function', 'high * 2', []],
  ['a value that is small enough', 'small(low)', []],
  ['a value that is not', 'small(high)', ['20 is too much']],
  ['a value against a limit of its own', 'small(high, most: 30)', []],
  ['deep inside', '3 + abs(-small(2 * high))', ['40 is too much']],
  [
    'one inside another, the inner one first',
    'small(small(high) + 1)',
    ['20 is too much', '21 is too much'],
  ],
  ['in a list', 'sum([small(low), small(11)])', ['11 is too much']],
  ['a value that is blank', 'small(empty)', []],
  ['a value with an error', 'small(lost)', []],
  ['in the branch that is taken', 'if low < 9 then small(high) else 0', ['20 is too much']],
  ['in the branch that is not', 'if low < 9 then 0 else small(high)', []],
  ['in the condition', 'if small(high) > 0 then 0 else 1', ['20 is too much']],
  ['in the fallback for a blank', 'empty otherwise small(high)', ['20 is too much']],
  ['in the fallback for what is there', 'low otherwise small(high)', []],
  ['behind an and that is settled', 'low > 9 and small(high) > 0', []],
  ['behind an and that is not', 'low < 9 and small(high) > 0', ['20 is too much']],
  ['behind an or that is settled', 'low < 9 or small(high) > 0', []],
  ['behind an or that is not', 'low > 9 or small(high) > 0', ['20 is too much']],
])('%s: %s', (_, source, sentences) => {
  expect(outside(source)).toEqual(sentences);
});
