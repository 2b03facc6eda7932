import type { FunctionDeclaration, Parameter } from '../language/functions/declaration.ts';
import type { Value } from '../language/kind.ts';
import { DENSITY, LENGTH, PRESSURE, TURNING_SPEED } from './dimensions.ts';

/** Below this many diameters a beam gives in shear as well as in bending. */
const SHORT = 10;

const SHAFT: readonly Parameter[] = [
  { name: 'outer', shape: 'either', dimension: LENGTH, doc: 'outer diameter of the tube' },
  { name: 'bore', shape: 'either', dimension: LENGTH, doc: 'inner diameter; 0 for a solid shaft' },
  {
    name: 'length',
    shape: 'either',
    dimension: LENGTH,
    doc: 'from joint centre to joint centre, not the bare tube',
  },
  {
    name: 'modulus',
    shape: 'either',
    dimension: PRESSURE,
    doc: 'modulus of elasticity along the tube; of a carbon tube the figure of its maker',
  },
  { name: 'density', shape: 'either', dimension: DENSITY, doc: 'mass for the volume of the wall' },
];

/** Where a bare tube begins to whirl. */
export const TUBE_CRITICAL_SPEED: FunctionDeclaration = {
  name: 'tube_critical_speed',
  doc: 'The turning speed at which a round tube, held at its ends by joints that let it bend freely, bows out and whirls.',
  parameters: SHAFT,
  result: { shape: 'lifted', dimension: TURNING_SPEED },
  work: { type: 'each', run: whirl, refuse: refuseShaft },
  example: [
    'tube_critical_speed(80 mm, bore: 0 mm, length: 1 m, modulus: 200 GPa, density: 8000 kg/m^3)',
    'pi^2 * 100 rad/s',
  ],
  source:
    "derived: (π/L)² √(EI/m′), Euler and Bernoulli's beam on two pins; its constant π/2 for short bearings is published, Mechanical Engineer's Data Handbook, p. 45",
  validity:
    'straight, even tube, 2 % for the tube itself; a real shaft whirls 10 to 30 % lower, through the mass of its yokes, the give of joints and mounts, shear, and tubes that are not round (common practice)',
  outside,
};

/** Speed in rad/s, from the wall's own mass spread along the tube. */
export function whirl(
  outer: number,
  bore: number,
  length: number,
  modulus: number,
  density: number,
): number {
  const gyration = Math.hypot(outer, bore) / 4;
  return (Math.PI / length) ** 2 * gyration * Math.sqrt(modulus / density);
}

function refuseShaft(...shaft: number[]): string | undefined {
  const [outer, bore, length, modulus, density] = shaft;
  if (!(bore! >= 0)) return 'a bore is not below 0';
  if (!(bore! < outer!)) return 'the bore of a tube is smaller than its outside';
  if (!(length! > 0)) return 'a shaft is longer than 0';
  return modulus! > 0 && density! > 0 ? undefined : 'modulus and density are above 0';
}

function outside(outer: Value, _bore: Value, length: Value): string | undefined {
  if (typeof outer !== 'number' || typeof length !== 'number') return undefined;
  return length < SHORT * outer
    ? `shorter than ${SHORT} diameters a tube gives in shear as well as in bending, and whirls lower than this`
    : undefined;
}
