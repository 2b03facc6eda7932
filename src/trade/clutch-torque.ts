import type { FunctionDeclaration, Parameter } from '../language/functions/declaration.ts';
import type { Value } from '../language/kind.ts';
import { FORCE, LENGTH, TORQUE } from './dimensions.ts';
import { someNumber } from './some-number.ts';

/** Dry linings, from cool to fading. Common practice, no source. */
const LEAST_FRICTION = 0.2;
const MOST_FRICTION = 0.45;

const SOURCE =
  'published: Ugural, machine design text (title and edition not confirmed), second-hand; Khurmi & Gupta, Theory of Machines, second-hand';

export const LINING: readonly Parameter[] = [
  { name: 'outer', shape: 'either', dimension: LENGTH, doc: 'outer diameter of the lining' },
  { name: 'inner', shape: 'either', dimension: LENGTH, doc: 'inner diameter of the lining' },
];

const PARAMETERS: readonly Parameter[] = [
  { name: 'faces', shape: 'either', doc: 'friction faces: two for one dry plate' },
  { name: 'friction', shape: 'either', doc: 'coefficient of friction' },
  { name: 'clamp', shape: 'either', dimension: FORCE, doc: 'force that clamps the disc' },
  ...LINING,
];

/** Torque of a bedded-in clutch. */
export const CLUTCH_TORQUE_BY_WEAR: FunctionDeclaration = {
  ...declare(meanRadiusByWear),
  name: 'clutch_torque_by_wear',
  doc: 'Torque at which a clutch slips, linings bedded in (uniform wear): faces times friction times clamp times half the sum of the radii. The lower of the two figures, and the one to plan with.',
  example: ['clutch_torque_by_wear(1, 0.3, 120 lbf, outer: 24 in, inner: 18 in)', '378 lbf·in'],
};

/** Torque of a clutch with new linings. */
export const CLUTCH_TORQUE_BY_PRESSURE: FunctionDeclaration = {
  ...declare(meanRadiusByPressure),
  name: 'clutch_torque_by_pressure',
  doc: 'Torque at which a clutch slips while its pressure is the same all over the lining (uniform pressure), as when new: 0 to 3 % more than after bedding in.',
  example: [
    'clutch_torque_by_pressure(2, 0.25, 1000 N, outer: 400 mm, inner: 200 mm)',
    '700/9 N·m',
  ],
};

function declare(
  meanRadius: (outer: number, inner: number) => number,
): Pick<FunctionDeclaration, 'parameters' | 'result' | 'work' | 'source' | 'validity' | 'outside'> {
  return {
    parameters: PARAMETERS,
    result: { shape: 'lifted', dimension: TORQUE },
    work: {
      type: 'each',
      run: (faces, friction, clamp, outer, inner) =>
        faces * friction * clamp * meanRadius(outer, inner),
      refuse: (_faces, _friction, _clamp, outer, inner) => refuseLining(outer, inner),
    },
    source: SOURCE,
    validity:
      'dry organic linings, friction 0.20 to 0.45; the clamp load at the height that the disc is worn to; ± 20 to 30 % in service',
    outside: (_faces, friction) => outside(friction),
  };
}

/** Why there is no lining of these diameters. */
export function refuseLining(outer: number, inner: number): string | undefined {
  if (!(inner >= 0)) return 'an inner diameter is not below 0';
  return inner < outer ? undefined : 'the inner diameter of a lining is smaller than the outer';
}

function outside(friction: Value): string | undefined {
  const odd = someNumber(friction, (number) => number < LEAST_FRICTION || number > MOST_FRICTION);
  return odd === undefined
    ? undefined
    : `a friction of ${Number(odd.toPrecision(3))} is not that of a dry organic lining, 0.20 to 0.45`;
}

/** From diameters: a quarter of their sum is half the sum of the radii. */
function meanRadiusByWear(outer: number, inner: number): number {
  return (outer + inner) / 4;
}

/** From diameters. The quotient of cubes and squares, without the factor that both share. */
function meanRadiusByPressure(outer: number, inner: number): number {
  return (outer * outer + outer * inner + inner * inner) / (3 * (outer + inner));
}
