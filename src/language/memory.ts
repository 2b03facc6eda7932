/**
 * Where compiled formulas find the values of cells. Cell `i` has its value in one place by its
 * kind: quantities (SI) and truths (1 or 0) in `numbers[i]`, all else in `others[i]`.
 * NaN and undefined mean that there is no value; `blanks[i]` is 1 where that is because it was
 * left empty.
 */
export interface Memory {
  readonly numbers: Float64Array;
  readonly others: unknown[];
  readonly blanks: Uint8Array;
}

/** Empty memory for so many cells. */
export function createMemory(cells: number): Memory {
  return {
    numbers: new Float64Array(cells).fill(Number.NaN),
    others: new Array<unknown>(cells).fill(undefined),
    blanks: new Uint8Array(cells),
  };
}
