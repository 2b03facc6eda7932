import { randomLcg } from 'd3-random';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createRandomNumbers } from '../../../src/sheet/spread/random-numbers.ts';

test('they are those of d3-random, block after block', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 2 ** 31 - 1 }), (seed) => {
      const fill = createRandomNumbers(seed);
      const random = randomLcg(seed);
      const block = new Float64Array(50);
      for (let round = 0; round < 3; round += 1) {
        fill(block);
        expect([...block]).toEqual(Array.from({ length: 50 }, random));
      }
    }),
  );
});

test('the same seed gives the same numbers, another seed others', () => {
  const draw = (seed: number) => {
    const block = new Float64Array(8);
    createRandomNumbers(seed)(block);
    return [...block];
  };
  expect(draw(7)).toEqual(draw(7));
  expect(draw(7)).not.toEqual(draw(8));
});
