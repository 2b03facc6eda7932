/** Dials that are easy and hard to draw, for tests and for looking at. */
import type { DrawingData } from '../../src/drawing/declaration.ts';
import { createData, type Slots } from './drawing-data.ts';

const THOU = 2.54e-5;
const HOUR = Math.PI / 6;
const thou = (value: number) => `${(value / THOU).toFixed(1).replace('-', '−')} thou`;
const UNITS = { readings: thou, offset: thou, dowel: thou };

export function createDial(
  hours: readonly number[],
  readings: readonly number[],
  more: Slots = {},
): DrawingData {
  const slots = {
    angles: hours.map((hour) => hour * HOUR),
    readings: readings.map((reading) => reading * THOU),
    ...more,
  };
  return createData('Round the bore', slots, UNITS);
}

export const SHIFT = {
  offset: 10 * THOU,
  direction: 4 * HOUR,
  dowel: 7 * THOU,
  dowel_direction: 4 * HOUR,
};
const EIGHT = [12, 1.5, 3, 4.5, 6, 7.5, 9, 10.5];
const EVEN = EIGHT.map((hour) => 10 * Math.cos((hour - 4) * HOUR));

export const DIALS: readonly (readonly [name: string, data: DrawingData])[] = [
  ['eight readings', createDial(EIGHT, EVEN, SHIFT)],
  [
    'a position blocked',
    createDial(
      EIGHT.filter((h) => h !== 4.5),
      EVEN.filter((_, i) => i !== 3),
      SHIFT,
    ),
  ],
  ['three readings', createDial([12, 4, 8], [0, 5, -5], SHIFT)],
  ['one reading', createDial([3], [5])],
  ['no readings', createDial([], [])],
  ['nothing known', createData('Round the bore', {})],
  [
    'all readings the same',
    createDial(
      EIGHT,
      EIGHT.map(() => 2),
      { ...SHIFT, offset: 0, dowel: 0 },
    ),
  ],
  [
    'forty-eight readings',
    createDial(
      Array.from({ length: 48 }, (_, i) => i / 4),
      Array.from({ length: 48 }, (_, i) => i % 7),
      SHIFT,
    ),
  ],
  ['12 o’clock read twice', createDial([12, 3, 6, 9, 12], [0, 3, -2, 3, 0.5], SHIFT)],
  ['huge readings', createDial([12, 3, 6, 9], [123456789, -98765432, 0, 5], SHIFT)],
  ['more readings than positions', createDial([12, 3], [1, 2, 3, 4])],
  [
    'a reading that is no number',
    createDial([12, 3, 6, 9], [0, Number.NaN, Number.POSITIVE_INFINITY, 3]),
  ],
  ['an offset far beyond the readings', createDial(EIGHT, EVEN, { ...SHIFT, offset: 1 })],
  ['plain dowels', createDial(EIGHT, EVEN, { ...SHIFT, dowel: 0 })],
  [
    'a dowel without a direction',
    createDial(EIGHT, EVEN, { ...SHIFT, dowel_direction: undefined }),
  ],
];
