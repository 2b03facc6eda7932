/**
 * Puts cells in an order in which each comes after those that it reads.
 *
 * Cells in a loop, and only those, are left out of the order; each loop is given once, as the
 * cells in the order in which they read one another. Works in time linear in the reads, without
 * recursion, so that long chains are no trouble.
 *
 * @param inputs for each cell, the cells that it reads
 */
export function orderCells(inputs: readonly (readonly number[])[]): {
  readonly order: readonly number[];
  readonly loops: readonly (readonly number[])[];
} {
  const order: number[] = [];
  const loops: number[][] = [];
  const state = new Uint8Array(inputs.length);
  const inLoop = new Set<number>();
  for (let start = 0; start < inputs.length; start += 1) {
    if (state[start] !== FRESH) continue;
    const path = [start];
    const next = [0];
    state[start] = OPEN;
    while (path.length > 0) {
      const cell = path.at(-1)!;
      const step = next[next.length - 1]!++;
      const input = inputs[cell]![step];
      if (input === undefined) {
        state[cell] = DONE;
        if (!inLoop.has(cell)) order.push(cell);
        path.pop();
        next.pop();
      } else if (state[input] === OPEN) {
        const loop = path.slice(path.indexOf(input));
        if (loop.some((member) => !inLoop.has(member))) loops.push(loop);
        for (const member of loop) inLoop.add(member);
      } else if (state[input] === FRESH) {
        state[input] = OPEN;
        path.push(input);
        next.push(0);
      }
    }
  }
  return { order, loops };
}

const FRESH = 0;
const OPEN = 1;
const DONE = 2;
