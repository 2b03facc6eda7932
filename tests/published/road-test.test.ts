import fc from 'fast-check';
import { evaluate } from 'mathjs';
import { expect, test } from 'vitest';
import { numberIn, openNotebooks, work } from '../support/notebooks.ts';
import { testPublished } from '../support/published.ts';

testPublished('road-test.json');

const BOOK = openNotebooks();
const RUN = fc.record({
  engine: fc.integer({ min: 800, max: 6000 }),
  mph: fc.integer({ min: 10, max: 90 }),
  tenths: fc.integer({ min: 220, max: 320 }),
  axle: fc.integer({ min: 250, max: 500 }).map((hundredths) => hundredths / 100),
});

/** mathjs has no turn: an engine speed there is a plain number a minute. */
test('a library with units of its own finds the same gear from the road', () => {
  fc.assert(
    fc.property(RUN, ({ engine, mph, tenths, axle }) => {
      const worked = work(BOOK, '130-road-test', {
        try_engine: `${engine}`,
        try_speed: `${mph}`,
        try_diameter: `${tenths / 10}`,
        try_axle: `${axle}`,
      });
      const rolled = `(3.05 * ${tenths / 10} in)`;
      const gear = evaluate(`${engine} / (1 minute) * ${rolled} / (${mph} mi/hour) / ${axle}`);
      expect(numberIn(worked, 'try_gear', '') / (gear as number)).toBeCloseTo(1, 12);
    }),
    // Each run works the whole book.
    { numRuns: 12 },
  );
});
