/** How a reading is taken: from one face to another, or of one part. */
export type DatumKind = (typeof TWO_FACES)[number] | (typeof ONE_PART)[number];

/** Level, from a higher face to a lower, from a lower to a higher, and an angle between two lines. */
export const TWO_FACES = ['along', 'down', 'up', 'slope'] as const;

/** Over the outside, within a bore, at the hours of the clock, and while it turns. */
export const ONE_PART = ['across', 'inside', 'round', 'runout'] as const;

/** Between what a reading is taken, in the words of the sheet. */
export interface Datum {
  readonly kind: DatumKind;
  /** The face that it is taken from, or the part. */
  readonly from: string;
  /** The face that it is taken to; undefined where it is of one part. */
  readonly to?: string;
}
