import { TUNNEL_OPENING } from '../../src/drawing/kinds/tunnel-opening.ts';
import type { Slots } from './drawing-data.ts';

export const INCH = 0.0254;

const scaled = (inches: readonly number[]) => inches.map((value) => value * INCH);

export const TUNNEL_UNITS = Object.fromEntries(
  TUNNEL_OPENING.slots.map(({ name }) => [
    name,
    (value: number) => `${(value / INCH).toFixed(2)} in`,
  ]),
);

/** The invented estate, as its sheet has it. */
export const ESTATE: Slots = {
  hole_front: -7.62 * INCH,
  hole_rear: -4.36 * INCH,
  hole_width: 3 * INCH,
  hole_aside: 0,
  least_length: 2.76 * INCH,
  least_width: 2.58 * INCH,
  bezel_front: -9 * INCH,
  bezel_rear: -3.5 * INCH,
  bezel_width: 4.5 * INCH,
  bezel_aside: 0,
  tunnel_width: 5.5 * INCH,
  lever_back: scaled([-6.42, -5.56, -6.42, -5.56, -6.42, -5.56, -5.99]),
  lever_right: scaled([-0.29, -0.29, 0, 0, 0.29, 0.29, 0]),
  lever_length: scaled(Array(7).fill(0.38)),
  lever_width: scaled(Array(7).fill(0.38)),
  gears: ['1st', '2nd', '3rd', '4th', '5th', 'R', 'N'],
};

const MANY = Array.from({ length: 24 }, (_, i) => `${i + 1}th gear`);

/** Openings as they come, and as they cannot be. */
export const TUNNEL_CASES: readonly (readonly [name: string, slots: Slots])[] = [
  ['the estate', ESTATE],
  ['an opening off the middle', { ...ESTATE, hole_aside: 0.4 * INCH, bezel_aside: -0.3 * INCH }],
  ['a bezel too small', { ...ESTATE, bezel_rear: -5 * INCH, bezel_width: 2 * INCH }],
  ['a lever that touches', { ...ESTATE, hole_width: 1.2 * INCH }],
  ['a datum far ahead', { ...ESTATE, hole_front: 1, hole_rear: 1.08, lever_back: undefined }],
  ['a datum in the opening', { ...ESTATE, hole_front: -0.04, hole_rear: 0.05 }],
  ['only the three that are asked for', { hole_front: 0.1, hole_rear: 0.18, hole_width: 0.07 }],
  ['gears of one gate only', { ...ESTATE, lever_right: scaled(Array(7).fill(0)) }],
  ['all gears on one spot', { ...ESTATE, lever_back: scaled(Array(7).fill(-6)) }],
  [
    'more gears than have room',
    {
      ...ESTATE,
      gears: MANY,
      lever_back: scaled(MANY.map(() => -6)),
      lever_right: scaled(MANY.map(() => 0)),
      lever_length: scaled(MANY.map(() => 0.3)),
      lever_width: scaled(MANY.map(() => 0.3)),
    },
  ],
  ['lists of different lengths', { ...ESTATE, lever_right: scaled([-0.29, -0.29]) }],
  ['a width not known', { ...ESTATE, hole_width: undefined }],
  ['a rear edge ahead of the front edge', { ...ESTATE, hole_rear: -9 * INCH }],
  ['no number', { ...ESTATE, hole_front: Number.NaN, bezel_width: Number.POSITIVE_INFINITY }],
  ['a hole wider than long', { ...ESTATE, hole_width: 5 * INCH }],
  ['a tunnel narrower than the hole', { ...ESTATE, tunnel_width: 1 * INCH }],
  ['a slot as thin as a hair', { ...ESTATE, hole_width: 0.0001 }],
  ['nothing known', {}],
];
