/**
 * The release bearing sheet as one would write it in TypeScript without Layshaft: SI numbers, no
 * units. Results carry the names that they have on the sheet.
 */

/** Readings in m, m/rad and plain numbers. */
export interface BearingReadings {
  readonly finger_reading: number;
  readonly bearing_reading: number;
  readonly straightedge: number;
  readonly wanted_gap: number;
  readonly disc_free: number;
  readonly disc_clamped: number;
  readonly lever_ratio: number;
  readonly collar_pitch: number;
  readonly shim_sizes: readonly number[];
  readonly disc_wear: number;
}

const INCH = 0.0254;
const TURN = 2 * Math.PI;

/** The readings that stand in the sheet. */
export const BEARING_READINGS: BearingReadings = {
  finger_reading: 3.212 * INCH,
  bearing_reading: 3.047 * INCH,
  straightedge: 0.25 * INCH,
  wanted_gap: 0.15 * INCH,
  disc_free: 0.33 * INCH,
  disc_clamped: 0.3 * INCH,
  lever_ratio: 3.5,
  collar_pitch: 0.0015 / TURN,
  shim_sizes: [0.005, 0.01, 0.01, 0.02, 0.03].map((size) => size * INCH),
  disc_wear: 0.035 * INCH,
};

/** Results of the sheet by their names there. */
export function solveBearing(given: BearingReadings) {
  const gap =
    given.finger_reading - given.straightedge - given.bearing_reading + given.straightedge;
  const gap_one_side = given.finger_reading - (given.bearing_reading - given.straightedge);
  const one_side_error = gap_one_side - gap;
  const cushion = given.disc_free - given.disc_clamped;
  const gap_lost_to_cushion = cushion * given.lever_ratio;
  const out_by = gap - given.wanted_gap;
  const collar_turns = out_by / given.collar_pitch;
  const shims = findNearestStack(out_by, given.shim_sizes);
  const shim_total = shims.reduce((sum, size) => sum + size, 0);
  const gap_after_shims = gap - shim_total;
  const finger_travel = given.disc_wear * given.lever_ratio;
  const gap_when_worn = gap - finger_travel;
  const wear_allowed = gap / given.lever_ratio;
  return {
    gap,
    gap_one_side,
    one_side_error,
    cushion,
    gap_lost_to_cushion,
    out_by,
    collar_turns,
    shims,
    shim_total,
    gap_after_shims,
    finger_travel,
    gap_when_worn,
    wear_allowed,
  };
}

/** Every choice of shims is tried; of those equally near, the one with the fewest shims. */
function findNearestStack(target: number, sizes: readonly number[]): readonly number[] {
  let best = 0;
  for (let choice = 1; choice < 2 ** sizes.length; choice += 1) {
    if (isBetter(choice, best, target, sizes)) best = choice;
  }
  return sizes.filter((_, i) => best & (1 << i));
}

function isBetter(choice: number, best: number, target: number, sizes: readonly number[]): boolean {
  const closer = Math.abs(target - total(best, sizes)) - Math.abs(target - total(choice, sizes));
  const same = Math.abs(closer) < 1e-9;
  return same ? countShims(choice) < countShims(best) : closer > 0;
}

function total(choice: number, sizes: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < sizes.length; i += 1) if (choice & (1 << i)) sum += sizes[i]!;
  return sum;
}

function countShims(choice: number): number {
  let count = 0;
  for (let rest = choice; rest !== 0; rest &= rest - 1) count += 1;
  return count;
}
