/** Fills the block with random numbers, from 0 up to but without 1; mutates it. */
export type FillRandom = (block: Float64Array) => void;

const STEPS = 2 ** 32;

/**
 * Random numbers by the block: called once for each number, a generator takes most of the time of a
 * simulation.
 *
 * Source: the linear congruential generator that Numerical Recipes calls quick and dirty, chapter 7.1
 * (from memory), which d3-random has as `randomLcg`.
 *
 * @param seed a whole number, or a share of 1; the same seed gives the same numbers
 */
export function createRandomNumbers(seed: number): FillRandom {
  let kept = (seed > 0 && seed < 1 ? seed * STEPS : Math.abs(seed)) | 0;
  return (block) => {
    kept = fill(block, kept);
  };
}

/**
 * Mutates the block; gives the state it ends with. No closure, and its figures written where they are
 * used: otherwise they are fetched for each number, which takes four times as long.
 */
function fill(block: Float64Array, start: number): number {
  const { length } = block;
  let state = start | 0;
  for (let i = 0; i < length; i += 1) {
    state = (Math.imul(1664525, state) + 1013904223) | 0;
    block[i] = (state >>> 0) * 2.3283064365386963e-10;
  }
  return state;
}
