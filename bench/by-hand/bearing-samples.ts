import { randomLcg } from 'd3-random';
import type { BearingReadings } from './release-bearing.ts';

/** The readings of the sheet that are in doubt, and by how much, in m. */
export type BearingDoubts = Readonly<
  Partial<Record<'finger_reading' | 'bearing_reading' | 'straightedge', number>>
>;

/**
 * The gap that is left when the disc is worn, drawn again and again as one would write the loop without
 * Layshaft: any value between the limits of a reading is as likely as any other.
 */
export function sampleBearing(
  given: BearingReadings,
  doubts: BearingDoubts,
  { samples, seed }: { readonly samples: number; readonly seed: number },
): Float64Array {
  const random = randomLcg(seed);
  const found = new Float64Array(samples);
  const fingerDoubt = doubts.finger_reading ?? 0;
  const bearingDoubt = doubts.bearing_reading ?? 0;
  const edgeDoubt = doubts.straightedge ?? 0;
  for (let i = 0; i < samples; i += 1) {
    const finger = given.finger_reading - fingerDoubt + 2 * fingerDoubt * random();
    const bearing = given.bearing_reading - bearingDoubt + 2 * bearingDoubt * random();
    const straightedge = given.straightedge - edgeDoubt + 2 * edgeDoubt * random();
    const gap = finger - straightedge - bearing + straightedge;
    found[i] = gap - given.disc_wear * given.lever_ratio;
  }
  return found;
}
