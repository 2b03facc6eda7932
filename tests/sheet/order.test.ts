import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { orderCells } from '../../src/sheet/order.ts';

/** For each cell the cells that it reads. */
type Graph = readonly (readonly number[])[];

const anyGraph: fc.Arbitrary<Graph> = fc.integer({ min: 1, max: 9 }).chain((size) =>
  fc.array(fc.uniqueArray(fc.nat(size - 1), { maxLength: 3 }), {
    minLength: size,
    maxLength: size,
  }),
);

/** Whether a cell reads itself in the end, found by following every path. */
function readsItself(graph: Graph, cell: number): boolean {
  const seen = new Set<number>();
  const follow = (at: number): boolean =>
    graph[at]!.some((input) => {
      if (input === cell) return true;
      if (seen.has(input)) return false;
      seen.add(input);
      return follow(input);
    });
  return follow(cell);
}

describe('a few cells', () => {
  test('none', () => {
    expect(orderCells([])).toEqual({ order: [], loops: [] });
  });

  test('one that reads nothing', () => {
    expect(orderCells([[]])).toEqual({ order: [0], loops: [] });
  });

  test('one that reads itself', () => {
    expect(orderCells([[0]])).toEqual({ order: [], loops: [[0]] });
  });

  test('two that read nothing keep their order', () => {
    expect(orderCells([[], []]).order).toEqual([0, 1]);
  });

  test('one that reads a later one', () => {
    //  1 ──▶ 0
    expect(orderCells([[1], []]).order).toEqual([1, 0]);
  });

  test('a diamond', () => {
    //  3 ──▶ 1 ──▶ 0
    //  └───▶ 2 ────┘
    const { order } = orderCells([[1, 2], [3], [3], []]);
    expect(order).toEqual([3, 1, 2, 0]);
  });

  test('a loop of two beside a chain', () => {
    //  0 ◀──▶ 1    3 ──▶ 2
    expect(orderCells([[1], [0], [3], []])).toEqual({ order: [3, 2], loops: [[0, 1]] });
  });

  test('a cell that reads a loop, and one that a loop reads, are in no loop', () => {
    //  3 ──▶ 1 ◀──▶ 2 ──▶ 0
    expect(orderCells([[1], [2, 3], [1], []])).toEqual({ order: [3, 0], loops: [[1, 2]] });
  });

  test('two loops through one cell are two', () => {
    //  1 ◀──▶ 0 ◀──▶ 2
    expect(orderCells([[1, 2], [0], [0]]).loops).toEqual([
      [0, 1],
      [0, 2],
    ]);
  });

  test('a cell that reads another twice', () => {
    expect(orderCells([[1, 1], []]).order).toEqual([1, 0]);
  });
});

describe('any graph', () => {
  const holds = (predicate: (graph: Graph) => void) =>
    fc.assert(fc.property(anyGraph, predicate), { numRuns: 2000 });

  test('each cell stands after those that it reads, loops left out', () => {
    holds((graph) => {
      const { order, loops } = orderCells(graph);
      const barred = new Set(loops.flat());
      for (const [i, cell] of order.entries()) {
        const before = new Set(order.slice(0, i));
        expect(graph[cell]!.filter((input) => !before.has(input) && !barred.has(input))).toEqual(
          [],
        );
      }
    });
  });

  test('each cell stands in the order or in a loop, never in both', () => {
    holds((graph) => {
      const { order, loops } = orderCells(graph);
      const found = [...order, ...new Set(loops.flat())].sort((a, b) => a - b);
      expect(found).toEqual([...graph.keys()]);
    });
  });

  test('each loop is one: every cell reads the next, and the last the first', () => {
    holds((graph) => {
      for (const loop of orderCells(graph).loops) {
        const next = [...loop.slice(1), loop[0]!];
        expect(loop.every((cell, i) => graph[cell]!.includes(next[i]!))).toBe(true);
        expect(new Set(loop).size).toBe(loop.length);
      }
    });
  });

  test('there are loops where, and only where, a cell reads itself in the end', () => {
    holds((graph) => {
      const { loops } = orderCells(graph);
      const own = graph.map((_, cell) => readsItself(graph, cell));
      expect(loops.flat().every((cell) => own[cell])).toBe(true);
      expect(loops.length > 0).toBe(own.includes(true));
    });
  });
});

test('a chain of 100 000 cells does not exhaust the stack', () => {
  const size = 100_000;
  const { order } = orderCells(
    Array.from({ length: size }, (_, i) => (i + 1 < size ? [i + 1] : [])),
  );
  expect(order[0]).toBe(size - 1);
  expect(order).toHaveLength(size);
});

test.each([100, 1_000, 10_000])('%i cells: each read is looked at once', (size) => {
  let reads = 0;
  const inputs = Array.from({ length: size }, (_, i) => {
    const own = [(i * 7) % size, (i * 13) % size].filter((input) => input > i);
    return new Proxy(own, {
      get(target, key) {
        if (typeof key === 'string' && /^\d+$/.test(key)) reads += 1;
        return Reflect.get(target, key);
      },
    });
  });
  const edges = inputs.reduce((sum, { length }) => sum + length, 0);
  orderCells(inputs);
  expect(reads).toBe(edges + size);
});
