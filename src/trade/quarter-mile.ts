import type { FunctionDeclaration } from '../language/functions/declaration.ts';
import type { QuantityList, Value } from '../language/kind.ts';
import { MASS, POWER, TIME } from './dimensions.ts';

/** Seconds for a pound of mass to each horsepower, fitted to the 32 cars through 0. */
const FACTOR = 6.2006;
const POUND = 0.45359237;
const HORSEPOWER = 745.6998715822702;
/** The cars that it was fitted to, in pounds for each horsepower. */
const [LIGHTEST, HEAVIEST] = [10.6, 51.5];

/** A rule of thumb, with a spread that is known. */
export const QUARTER_MILE_RULE: FunctionDeclaration = {
  name: 'quarter_mile_rule',
  doc: 'The time over a standing quarter mile from mass and power alone, as 32 cars of 1973 and 1974 ran it: 6.20 s times the cube root of pounds for each horsepower.',
  parameters: [
    { name: 'mass', shape: 'either', dimension: MASS, doc: 'mass of the car' },
    { name: 'power', shape: 'either', dimension: POWER, doc: 'peak power' },
  ],
  result: { shape: 'lifted', dimension: TIME },
  work: {
    type: 'each',
    run: (mass, power) => FACTOR * Math.cbrt(poundsPerHorsepower(mass!, power!)),
    refuse: (_, power) => (power! > 0 ? undefined : 'without power there is no time'),
  },
  example: ['quarter_mile_rule(2700 lb, 100 hp)', '18.6018 s'],
  source:
    'derived: least squares through 0 over the mtcars data (1974 Motor Trend US magazine, by Henderson & Velleman 1981, second-hand); the cube root is that of constant power, attributed to Fox, Am. J. Phys. 41, 311 (1973), not read',
  validity:
    '10.6 to 51.5 lb for each horsepower; ± 1.1 s (one standard deviation of the 32 cars), the worst 3.1 s out; their horsepower mixes gross and net figures',
  outside: (mass, power) => {
    const [masses, powers] = [toList(mass), toList(power)];
    const ratios = Array.from({ length: Math.max(masses.length, powers.length) }, (_, i) =>
      poundsPerHorsepower(masses[i] ?? masses[0]!, powers[i] ?? powers[0]!),
    );
    return ratios.some((ratio) => ratio < LIGHTEST || ratio > HEAVIEST)
      ? 'none of the 32 cars has so much or so little mass for its power'
      : undefined;
  },
};

function poundsPerHorsepower(mass: number, power: number): number {
  return mass / POUND / (power / HORSEPOWER);
}

function toList(value: Value): readonly number[] {
  return typeof value === 'number' ? [value] : Array.from(value as QuantityList);
}
