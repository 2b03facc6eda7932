/**
 * Where compiled formulas find the values of cells. Cell `i` has its value in one place by its
 * kind: quantities (SI) and truths (1 or 0) in `numbers[i]`, all else in `others[i]`.
 * NaN and undefined mean that there is no value; `blanks[i]` is 1 where that is because it was
 * left empty. Behind those of the cells `numbers` holds the constants of the formulas.
 */
export interface Memory {
  readonly numbers: Float64Array;
  readonly others: unknown[];
  readonly blanks: Uint8Array;
}

/** Memory for so many cells, without a value but for the constants. */
export function createMemory(cells: number, constants: readonly number[] = []): Memory {
  const numbers = new Float64Array(cells + constants.length).fill(Number.NaN);
  numbers.set(constants, cells);
  return {
    numbers,
    others: new Array<unknown>(cells).fill(undefined),
    blanks: new Uint8Array(cells),
  };
}
