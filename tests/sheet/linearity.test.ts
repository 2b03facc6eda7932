import { describe, expect, test, vi } from 'vitest';
import { dependentsOf } from '../../src/sheet/dependents.ts';
import { block, makeSheet, messageOf, numberOf } from './made-book.ts';

// Large sheets take their time on a busy machine; how much is no matter here.
vi.setConfig({ testTimeout: 60_000 });

const checks = vi.hoisted(() => ({ formulas: 0, walked: 0 }));

vi.mock(import('../../src/language/check.ts'), async (original) => {
  const real = await original();
  return {
    ...real,
    checkExpression: (...given) => {
      checks.formulas += 1;
      return real.checkExpression(...given);
    },
  };
});

vi.mock(import('../../src/language/walk.ts'), async (original) => {
  const real = await original();
  return {
    ...real,
    partsOf: (tree) => {
      checks.walked += 1;
      return real.partsOf(tree);
    },
  };
});

/** A sheet of so many formulas, each of which reads two before it. */
function sheetOf(cells: number): string {
  const lines = Array.from({ length: cells }, (_, i) => {
    const [near, far] = [Math.max(0, i), Math.max(0, Math.floor(i / 2))];
    return `v${i + 1} = v${near} * 0.5 + v${far} "Value ${i + 1}" to 0.01`;
  });
  return block('given', 'v0 = 1') + block('work', ...lines);
}

describe.each([100, 1_000, 10_000])('a sheet of %i formulas', (cells) => {
  test('is checked formula by formula, each once', () => {
    checks.formulas = 0;
    makeSheet(sheetOf(cells));
    // The entry of the given is a formula too: read for its kind, then for its value.
    expect(checks.formulas).toBe(cells + 2);
  });

  test('is walked for its names part by part, the same few times each', () => {
    checks.walked = 0;
    makeSheet(sheetOf(cells));
    // Five parts a formula: a name, a number, their product, a name, the sum.
    expect(checks.walked / (5 * cells)).toBeLessThanOrEqual(2);
  });

  test('is put into an order that holds each cell once', () => {
    const { book } = makeSheet(sheetOf(cells));
    expect(book.order).toHaveLength(cells + 1);
    expect(new Set(book.order).size).toBe(cells + 1);
  });
});

test('what hangs on a cell is found without looking at the rest', () => {
  const { book } = makeSheet(
    block('given', 'a = 1', 'b = 1') + block('work', 'c = a + 1', 'd = c + 1', 'e = b + 1'),
  );
  const dependents = dependentsOf(book);
  const names = (of: string) =>
    [...dependents(book.find('made', of)!.index)].map((index) => book.cells[index]!.name);
  expect(names('a')).toEqual(['a', 'c', 'd']);
  expect(names('b')).toEqual(['b', 'e']);
  expect(names('e')).toEqual(['e']);
});

describe('a chain of 20 000 cells', () => {
  const lines = Array.from({ length: 20_000 }, (_, i) => `v${i + 1} = v${i} + 1`);

  test('is linked and solved without recursion', () => {
    const made = makeSheet(block('given', 'v0 = 1') + block('work', ...lines));
    expect(made.book.problems).toEqual([]);
    expect(numberOf(made, 'v20000')).toBe(20_001);
  });

  test('written from its end to its start too', () => {
    const made = makeSheet(block('work', ...lines.toReversed()) + block('given', 'v0 = 1'));
    expect(numberOf(made, 'v20000')).toBe(20_001);
  });

  test('that waits for its start names the start in one short sentence', () => {
    const made = makeSheet(block('given', 'v0 = blank') + block('work', ...lines));
    expect(messageOf(made, 'v20000')).toBe('waits for v19999, which waits for v0, which is blank');
  });

  test('that waits for a start with an error does so too', () => {
    const made = makeSheet(block('work', 'v0 = 1 in + 1 s', ...lines));
    expect(messageOf(made, 'v20000')).toBe(
      'waits for v19999, which waits for v0, which has an error',
    );
    expect(made.book.problems).toHaveLength(1);
  });

  test('that bites its own tail is one loop, told in a sentence of bearable length', () => {
    const made = makeSheet(block('work', 'v0 = v20000', ...lines));
    expect(made.book.problems.map(({ code }) => code)).toEqual(['loop']);
    expect(made.book.problems[0]!.message.length).toBeLessThan(300);
    expect(messageOf(made, 'v10000')).toMatch(
      /^these values wait for one another in a loop: v0 → /,
    );
  });
});

test('a stack of 1 000 lines is added up', () => {
  const terms = Array.from({ length: 1_000 }, () => '+ 1 mm');
  const made = makeSheet(block('stack height "Height"', ...terms));
  expect(numberOf(made, 'height')).toBeCloseTo(1, 9);
});

test('a stack of 10 000 lines is refused at the first line too many', () => {
  const terms = Array.from({ length: 10_000 }, () => '+ 1 mm');
  const { book } = makeSheet(block('stack height "Height"', ...terms));
  expect(book.problems).toMatchObject([{ code: 'too-long', place: { line: 1_002 } }]);
});
