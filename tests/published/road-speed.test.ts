import fc from 'fast-check';
import { evaluate } from 'mathjs';
import { expect, test } from 'vitest';
import { numberIn, openNotebooks, work } from '../support/notebooks.ts';
import { testPublished } from '../support/published.ts';

testPublished('road-speed.json');

const BOOK = openNotebooks();
const CAR = fc.record({
  width: fc.integer({ min: 145, max: 335 }),
  aspect: fc.integer({ min: 30, max: 82 }),
  rim: fc.integer({ min: 10, max: 20 }),
  axle: fc.integer({ min: 250, max: 500 }).map((hundredths) => hundredths / 100),
  gear: fc.integer({ min: 55, max: 380 }).map((hundredths) => hundredths / 100),
  mph: fc.integer({ min: 5, max: 150 }),
  redline: fc.integer({ min: 2000, max: 9000 }),
});

/** mathjs has no turn: an engine speed there is a plain number a minute. */
test('a library with units of its own works the same engine and road speeds', () => {
  fc.assert(
    fc.property(CAR, (car) => {
      const diameter = `(${car.rim} in + 2 * ${car.width} mm * ${car.aspect} / 100)`;
      const rolled = `(3.05 * ${diameter})`;
      const overall = `${car.axle} * ${car.gear}`;
      const worked = work(BOOK, '20-gearing', entriesOf(car));
      const engine = evaluate(`${car.mph} mi/hour / ${rolled} * ${overall} * 1 minute`) as number;
      const road = evaluate(
        `${car.redline} / (1 minute) / (${overall}) * ${rolled} / (1 mi/hour)`,
      ) as number;
      expect(numberIn(worked, 'engine_speed_at_cruise', 'rpm') / engine).toBeCloseTo(1, 12);
      expect(numberIn(worked, 'road_speed_at_redline', 'mph') / road).toBeCloseTo(1, 12);
    }),
    { numRuns: 50 },
  );
});

type Car = typeof CAR extends fc.Arbitrary<infer T> ? T : never;

function entriesOf(car: Car) {
  return {
    tyre_width: `${car.width}`,
    aspect_ratio: `${car.aspect}`,
    rim_diameter: `${car.rim}`,
    axle_ratio: `${car.axle}`,
    gear_ratios: `[${car.gear}]`,
    cruise_speed: `${car.mph}`,
    redline: `${car.redline}`,
  };
}
