import type { FunctionDeclaration, Parameter } from '../language/functions/declaration.ts';
import { LINING, refuseLining } from './clutch-torque.ts';
import { FORCE, LENGTH, PRESSURE } from './dimensions.ts';

const SOURCE =
  'published: Khurmi & Gupta, Theory of Machines, second-hand: uniform wear, pressure times radius constant';
const VALIDITY =
  'linings bedded in and plates flat; a plate coned by heat presses on one edge only';

const AT: Parameter = {
  name: 'at',
  shape: 'either',
  dimension: LENGTH,
  doc: 'diameter at which the pressure is wanted',
};

/** Pressure between lining and plate at one diameter. */
export const LINING_PRESSURE: FunctionDeclaration = {
  name: 'lining_pressure',
  doc: 'Pressure on a bedded-in lining at one diameter; highest at the inner edge.',
  parameters: [
    { name: 'clamp', shape: 'either', dimension: FORCE, doc: 'force that clamps the disc' },
    ...LINING,
    AT,
  ],
  result: { shape: 'lifted', dimension: PRESSURE },
  work: {
    type: 'each',
    run: (clamp, outer, inner, at) => (2 * clamp) / (Math.PI * at * (outer - inner)),
    refuse: (_, outer, inner, at) => refuseLining(outer, inner) ?? refusePlace(outer, inner, at),
  },
  example: ['lining_pressure(1000 N, outer: 300 mm, inner: 200 mm, at: 200 mm)', '0.1 MPa / pi'],
  source: SOURCE,
  validity: VALIDITY,
};

/** Clamp load that brings the inner edge to a pressure. */
export const CLAMP_FOR_PRESSURE: FunctionDeclaration = {
  name: 'clamp_for_pressure',
  doc: 'Clamp load that brings a bedded-in lining to a pressure at its inner edge, where it is highest.',
  parameters: [
    { name: 'pressure', shape: 'either', dimension: PRESSURE, doc: 'pressure at the inner edge' },
    ...LINING,
  ],
  result: { shape: 'lifted', dimension: FORCE },
  work: {
    type: 'each',
    run: (pressure, outer, inner) => (Math.PI * pressure * inner * (outer - inner)) / 2,
    refuse: (_, outer, inner) => refuseLining(outer, inner),
  },
  example: ['clamp_for_pressure(0.1 MPa, outer: 300 mm, inner: 200 mm)', '1000 N * pi'],
  source: SOURCE,
  validity: VALIDITY,
};

function refusePlace(outer: number, inner: number, at: number): string | undefined {
  if (at === 0) return 'the pressure of a lining worn to its very middle has no end there';
  return at >= inner && at <= outer ? undefined : 'there is no lining at this diameter';
}
