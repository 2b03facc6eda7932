/** Pedals that are easy and hard to draw, for tests and for looking at. */
import type { DrawingData } from '../../src/drawing/declaration.ts';
import { createData, type Slots } from './drawing-data.ts';

const inches = (value: number) => `${(value / 0.0254).toFixed(2)} in`;
const SLOTS = ['pad_radius', 'pad_travel', 'rod_radius', 'stop_radius', 'stop_length', 'floor'];
const UNITS = Object.fromEntries(SLOTS.map((slot) => [slot, inches]));

/** Lengths in inches. */
export function createPedal(lengths: Slots): DrawingData {
  const slots = Object.entries(lengths).map(([slot, value]) => [
    slot,
    typeof value === 'number' ? value * 0.0254 : undefined,
  ]);
  return createData('Pedal', Object.fromEntries(slots), UNITS);
}

export const USUAL = {
  pad_radius: 11.5,
  pad_travel: 6.26,
  rod_radius: 2,
  stop_radius: 9,
  stop_length: 1.85,
  floor: 7,
};

export const PEDALS: readonly (readonly [name: string, data: DrawingData])[] = [
  ['a pedal', createPedal(USUAL)],
  ['no floor and no rod', createPedal({ ...USUAL, floor: undefined, rod_radius: undefined })],
  ['length and travel alone', createPedal({ pad_radius: 11.5, pad_travel: 6 })],
  ['no travel', createPedal({ ...USUAL, pad_travel: undefined })],
  ['nothing known', createPedal({})],
  ['a travel of nought', createPedal({ ...USUAL, pad_travel: 0 })],
  ['a travel beyond the circle', createPedal({ ...USUAL, pad_travel: 40 })],
  ['a stop of less than nothing', createPedal({ ...USUAL, stop_length: -1.5 })],
  ['a stop as long as a car', createPedal({ ...USUAL, stop_length: 160 })],
  ['a stop of a hair', createPedal({ ...USUAL, stop_length: 0.01 })],
  ['a stop below the pad', createPedal({ ...USUAL, stop_radius: 14 })],
  ['a stop at the pad', createPedal({ ...USUAL, stop_radius: 11.5 })],
  ['a rod at the stop', createPedal({ ...USUAL, rod_radius: 9 })],
  ['a rod of a hair', createPedal({ ...USUAL, rod_radius: 0.01 })],
  ['a floor behind the pad', createPedal({ ...USUAL, floor: 1 })],
  [
    'lengths that are no numbers',
    createPedal({ ...USUAL, stop_length: Number.NaN, rod_radius: Number.POSITIVE_INFINITY }),
  ],
];
