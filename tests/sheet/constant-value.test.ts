import { describe, expect, test } from 'vitest';
import { BUILTINS, createFunctions } from '../../src/language/functions/builtins.ts';
import { nameKind } from '../../src/language/kind.ts';
import { parseExpression } from '../../src/language/parse.ts';
import { constantValue } from '../../src/sheet/constant-value.ts';

const FUNCTIONS = createFunctions(BUILTINS);

function work(source: string) {
  const tree = parseExpression(source, 'sheet');
  if ('code' in tree) throw new Error(tree.message);
  return constantValue(tree, FUNCTIONS, source);
}

test.each([
  ['3', 3, 'plain number'],
  ['0', 0, 'plain number'],
  ['2 * 1/4 in', 0.0127, 'length'],
  ['sqrt(9 mm^2)', 0.003, 'length'],
  ['[1 m, 2 m]', Float64Array.of(1, 2), 'list of length'],
  ['"free"', 'free', 'text'],
])('%s is worked without a sheet', (source, value, kind) => {
  const found = work(source);
  if ('code' in found) throw new Error(found.message);
  if (typeof value === 'number') expect(found.value).toBeCloseTo(value, 15);
  else expect(found.value).toEqual(value);
  expect(nameKind(found.kind)).toBe(kind);
});

describe('what has no value of its own', () => {
  test.each([
    ['a name', 'gap + 1 mm', 'unknown-name', 'no value is called gap'],
    ['a sum of unlike things', '1 mm + 1 s', 'dimension-mismatch', 'cannot add'],
    ['a division by zero', '1 / 0', 'division-by-zero', 'the divisor is written as 0'],
    ['a root that is none', 'sqrt(-1)', 'out-of-domain', 'not a real number'],
    ['a number too large', '1e300 * 1e300', 'overflow', 'too large'],
  ])('%s', (_, source, code, message) => {
    expect(work(source)).toMatchObject({ code, message: expect.stringContaining(message) });
  });
});
