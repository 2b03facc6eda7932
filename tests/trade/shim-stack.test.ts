import fc from 'fast-check';
import { expect, test } from 'vitest';
import { NEAREST_STACK } from '../../src/trade/shim-stack.ts';
import { refusalOf, runFunction } from '../support/run-function.ts';

const stack = (height: number, sizes: readonly number[]) =>
  Array.from(runFunction(NEAREST_STACK, height, Float64Array.from(sizes)) as Float64Array);
const sum = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0);

test.each([
  ['a height met exactly', 15, [5, 10, 20], [10, 5]],
  ['two shims of one size', 20, [10, 10, 5], [10, 10]],
  ['one thick shim before two thin ones', 20, [10, 10, 20], [20]],
  ['of two equally near the fewer shims', 15, [5, 5, 20], [20]],
  ['nothing for a height of nothing', 0, [5], []],
  ['nothing for a height below nothing', -5, [5], []],
  ['nothing where the thinnest is too thick', 2, [5, 10], []],
  ['nothing from an empty drawer', 10, [], []],
  ['all of them where all are too few', 100, [5, 10], [10, 5]],
])('%s', (_, height, sizes, wanted) => {
  expect(stack(height, sizes)).toEqual(wanted);
});

test('no other stack comes nearer, tried one by one', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 120 }),
      fc.array(fc.integer({ min: 1, max: 40 }), { maxLength: 8 }),
      (height, sizes) => {
        const miss = Math.abs(height - sum(stack(height, sizes)));
        for (let picked = 0; picked < 2 ** sizes.length; picked += 1) {
          const other = sum(sizes.filter((_, i) => picked & (1 << i)));
          expect(miss).toBeLessThanOrEqual(Math.abs(height - other));
        }
      },
    ),
  );
});

test('takes each entry of the drawer once at most', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 120 }),
      fc.array(fc.integer({ min: 1, max: 40 }), { maxLength: 8 }),
      (height, sizes) => {
        const left = [...sizes];
        for (const shim of stack(height, sizes)) {
          expect(left).toContain(shim);
          left.splice(left.indexOf(shim), 1);
        }
      },
    ),
  );
});

test('a shim of no thickness and a drawer too full are refused', () => {
  const refused = (sizes: readonly number[]) =>
    refusalOf(NEAREST_STACK, 10, Float64Array.from(sizes));
  expect(refused([5, 0])).toBe('a shim is thicker than 0');
  expect(refused(Array(25).fill(1))).toMatch(/25 shims make too many stacks/);
  expect(refused(Array(24).fill(1))).toBeUndefined();
});
