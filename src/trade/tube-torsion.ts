import type { FunctionDeclaration, Parameter } from '../language/functions/declaration.ts';
import { ANGLE, LENGTH, PRESSURE, SECOND_MOMENT, TORQUE } from './dimensions.ts';

const SOURCE =
  'published: Philpot, Mechanics of Materials, and Beer & Johnston, Mechanics of Materials, second-hand (torsion of round tubes, St Venant)';
const VALIDITY =
  'straight round tube below yield; leaves out welds, keyways, buckling of a thin wall and shock, which is a factor of 2 to 3 (common practice)';
/** Thinner walls than this share of the diameter may buckle before they yield. From memory. */
const THIN = 0.02;

const TUBE: readonly Parameter[] = [
  { name: 'outer', shape: 'either', dimension: LENGTH, doc: 'outer diameter' },
  { name: 'bore', shape: 'either', dimension: LENGTH, doc: 'inner diameter; 0 for a solid shaft' },
];
const TORQUE_IN_TUBE: Parameter = {
  name: 'torque',
  shape: 'either',
  dimension: TORQUE,
  doc: 'torque in the tube',
};

const shared = { source: SOURCE, validity: VALIDITY } as const;

/** Polar second moment of area. */
export const TUBE_SECOND_MOMENT: FunctionDeclaration = {
  ...shared,
  name: 'tube_second_moment',
  doc: 'What the section of a round tube sets against twisting (polar second moment of area).',
  parameters: TUBE,
  result: { shape: 'lifted', dimension: SECOND_MOMENT },
  work: { type: 'each', run: secondMoment, refuse: refuseTube },
  example: ['tube_second_moment(20 mm, bore: 0 mm)', '5000 mm^4 * pi'],
};

/** Shear stress at the outside. */
export const TUBE_SHEAR_STRESS: FunctionDeclaration = {
  ...shared,
  name: 'tube_shear_stress',
  doc: 'Shear stress at the outside of a round tube under torque; at the bore it is less by the ratio of the diameters.',
  parameters: [TORQUE_IN_TUBE, ...TUBE],
  result: { shape: 'lifted', dimension: PRESSURE },
  work: {
    type: 'each',
    run: (torque, outer, bore) => (torque * outer) / 2 / secondMoment(outer, bore),
    refuse: (_, outer, bore) => refuseTube(outer, bore),
  },
  example: ['tube_shear_stress(pi * 100 N·m, 20 mm, bore: 0 mm)', '200 MPa'],
  outside: (_, outer, bore) => outside(outer, bore),
};

/** Torque that brings the outside to a shear stress. */
export const TUBE_TORQUE: FunctionDeclaration = {
  ...shared,
  name: 'tube_torque',
  doc: 'Torque that brings the outside of a round tube to a shear stress.',
  parameters: [
    { name: 'stress', shape: 'either', dimension: PRESSURE, doc: 'shear stress at the outside' },
    ...TUBE,
  ],
  result: { shape: 'lifted', dimension: TORQUE },
  work: {
    type: 'each',
    run: (stress, outer, bore) => (2 * stress * secondMoment(outer, bore)) / outer,
    refuse: (_, outer, bore) => refuseTube(outer, bore),
  },
  example: ['tube_torque(200 MPa, 20 mm, bore: 0 mm)', 'pi * 100 N·m'],
  outside: (_, outer, bore) => outside(outer, bore),
};

/** Angle by which one end turns against the other. */
export const TUBE_TWIST: FunctionDeclaration = {
  ...shared,
  name: 'tube_twist',
  doc: 'Angle by which one end of a round tube turns against the other under torque.',
  parameters: [
    TORQUE_IN_TUBE,
    { name: 'length', shape: 'either', dimension: LENGTH, doc: 'length of the tube' },
    { name: 'shear_modulus', shape: 'either', dimension: PRESSURE, doc: 'shear modulus G' },
    ...TUBE,
  ],
  result: { shape: 'lifted', dimension: ANGLE },
  work: {
    type: 'each',
    run: (torque, length, modulus, outer, bore) =>
      (torque * length) / (modulus * secondMoment(outer, bore)),
    refuse: (_torque, _length, modulus, outer, bore) =>
      modulus > 0 ? refuseTube(outer, bore) : 'a shear modulus is above 0',
  },
  example: ['tube_twist(pi * 100 N·m, 1 m, 80 GPa, 20 mm, bore: 0 mm)', '0.25 rad'],
};

function secondMoment(outer: number, bore: number): number {
  return (Math.PI / 32) * (outer ** 4 - bore ** 4);
}

function refuseTube(outer: number, bore: number): string | undefined {
  if (!(bore >= 0)) return 'a bore is not below 0';
  return bore < outer ? undefined : 'the bore of a tube is smaller than its outside';
}

function outside(outer: unknown, bore: unknown): string | undefined {
  if (typeof outer !== 'number' || typeof bore !== 'number') return undefined;
  return (outer - bore) / 2 < THIN * outer
    ? 'the wall is under 2 % of the diameter, and may buckle before the metal yields'
    : undefined;
}
