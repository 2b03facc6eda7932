import type { FunctionDeclaration } from '../language/functions/declaration.ts';
import { LENGTH, PRESSURE, TORQUE } from './dimensions.ts';

/** The share of the outer diameter at which a lining on its pressure limit carries most. */
const BEST = 1 / Math.sqrt(3);
/** What the cubic below comes to there. */
const HIGHEST = BEST - BEST ** 3;
/** A torque that misses the highest by binary rounding alone is met there. */
const SLACK = 1e-12;

/** The inner diameters at which a lining of a given outer diameter carries a torque. */
export const CLUTCH_INNER_DIAMETERS: FunctionDeclaration = {
  name: 'clutch_inner_diameters',
  doc: 'The two inner diameters at which a lining, bedded in and clamped up to a pressure at its inner edge, carries a torque: the wide lining first, then the narrow one. There are always two, and either will do.',
  parameters: [
    { name: 'torque', shape: 'quantity', dimension: TORQUE, doc: 'torque to be carried' },
    { name: 'faces', shape: 'quantity', doc: 'friction faces: two for one dry plate' },
    { name: 'friction', shape: 'quantity', doc: 'coefficient of friction' },
    {
      name: 'pressure',
      shape: 'quantity',
      dimension: PRESSURE,
      doc: 'pressure allowed at the inner edge',
    },
    { name: 'outer', shape: 'quantity', dimension: LENGTH, doc: 'outer diameter of the lining' },
  ],
  result: { shape: 'list', dimension: LENGTH },
  work: {
    type: 'whole',
    run: (...values) => innerDiameters(values as number[]),
    refuse: (...values) => refuse(values as number[]),
  },
  example: [
    'clutch_inner_diameters(18.75 N·m * pi, 2, 0.25, 0.1 MPa, outer: 200 mm)',
    '[100 mm, 50 mm * (sqrt(13) - 1)]',
  ],
  source:
    'derived: uniform wear, the clamp load from the pressure at the inner edge; a cubic, solved in closed form',
  validity: 'linings bedded in; each of the two needs its own clamp load',
};

/**
 * With x the inner over the outer diameter the torque is `highest` times (x − x³)/HIGHEST. The
 * cubic x³ − x + k = 0 has two roots between 0 and 1.
 */
function innerDiameters(values: readonly number[]): Float64Array {
  const k = Math.min(HIGHEST, load(values));
  const third = Math.acos(-k / HIGHEST) / 3;
  const root = (turn: number) => 2 * BEST * Math.cos(third - (turn * 2 * Math.PI) / 3);
  const outer = values[4]!;
  return Float64Array.of(root(1) * outer, root(0) * outer);
}

/** Torque over what the same pressure would carry per unit of x − x³. */
function load([torque, faces, friction, pressure, outer]: readonly number[]): number {
  return (8 * torque!) / (faces! * friction! * Math.PI * pressure! * outer! ** 3);
}

function refuse(values: readonly number[]): string | undefined {
  if (values.slice(1).some((value) => !(value > 0)))
    return 'faces, friction, pressure and outer diameter are above 0';
  const k = load(values);
  if (!(k >= 0)) return 'the torque to be carried is not below 0';
  if (k <= HIGHEST * (1 + SLACK)) return undefined;
  const share = Math.floor((100 * HIGHEST) / k);
  return `no inner diameter will do: at this pressure a lining of this size carries ${share} % of the torque at most`;
}
