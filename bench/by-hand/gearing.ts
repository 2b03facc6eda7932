/**
 * The gearing sheet, its part on engine and road speeds, as one would write it in TypeScript without
 * Layshaft: SI numbers, no units, no checks of kinds, nothing to look at.
 */

/** Readings in SI: m, rad/s, m/s; ratios and shares as plain numbers. */
export interface GearingReadings {
  readonly tyre_width: number;
  readonly aspect_ratio: number;
  readonly rim_diameter: number;
  readonly rolling_factor: number;
  readonly measured_rollout: number | undefined;
  readonly axle_ratio: number;
  readonly gear_ratios: readonly number[];
  readonly redline: number;
  readonly cruise_speed: number;
  readonly old_ratios: readonly number[];
  readonly converter_slip: number;
}

const INCH = 0.0254;
const TURN = 2 * Math.PI;
const RPM = TURN / 60;
const MPH = 0.44704;

/** The readings that stand in the sheet. */
export const GEARING_READINGS: GearingReadings = {
  tyre_width: 0.205,
  aspect_ratio: 0.6,
  rim_diameter: 15 * INCH,
  rolling_factor: 3.05,
  measured_rollout: undefined,
  axle_ratio: 3.25,
  gear_ratios: [3.15, 1.95, 1.35, 1, 0.74],
  redline: 5500 * RPM,
  cruise_speed: 70 * MPH,
  old_ratios: [2.4, 1.5, 1],
  converter_slip: 0.04,
};

/** Results of the sheet by their names there. */
export function solveGearing(given: GearingReadings) {
  const tyre_diameter = given.rim_diameter + 2 * given.tyre_width * given.aspect_ratio;
  const rolling_circumference = given.measured_rollout ?? given.rolling_factor * tyre_diameter;
  const distance_per_turn = rolling_circumference / TURN;
  const turns_per_mile = 1 / distance_per_turn;
  const geometric_turns = TURN / (Math.PI * tyre_diameter);
  const pi_too_long = (Math.PI * tyre_diameter) / rolling_circumference - 1;
  const rollout_per_diameter = rolling_circumference / tyre_diameter;

  const ratios = [...given.gear_ratios].sort((a, b) => b - a);
  const gear_name = ratios.map((_, i) => nameOrdinal(i + 1));
  const wheel_speed = given.cruise_speed / distance_per_turn;
  const shaft_speed = wheel_speed * given.axle_ratio;
  const engine_speed_at_cruise = ratios.map((ratio) => shaft_speed * ratio);
  const road_speed_at_redline = ratios.map(
    (ratio) => (given.redline / (given.axle_ratio * ratio)) * distance_per_turn,
  );

  const upper = ratios.slice(1);
  const engine_speed_after_upshift = upper.map((ratio, i) => (given.redline * ratio) / ratios[i]!);
  const gear_step = upper.map((ratio, i) => ratios[i]! / ratio);
  const engine_speed_drop = gear_step.map((step) => 1 - 1 / step);
  const largest_step = Math.max(...gear_step);
  const engine_speed_in_run = findLargestUpTo(engine_speed_at_cruise, given.redline);

  const first_gear_overall = ratios[0]! * given.axle_ratio;
  const top_gear_cruise = engine_speed_at_cruise.at(-1)!;

  const old_top_gear = Math.min(...given.old_ratios);
  const old_without_slip = shaft_speed * old_top_gear;
  const old_cruise = old_without_slip / (1 - given.converter_slip);
  const engine_speed_saved = old_cruise - top_gear_cruise;
  const share_saved = engine_speed_saved / old_cruise;
  const saved_without_slip = old_without_slip - top_gear_cruise;
  const fastest_shaft = given.redline / ratios.at(-1)!;

  return {
    tyre_diameter,
    rolling_circumference,
    distance_per_turn,
    turns_per_mile,
    geometric_turns,
    pi_too_long,
    rollout_per_diameter,
    ratios,
    gear_name,
    wheel_speed,
    engine_speed_at_cruise,
    road_speed_at_redline,
    engine_speed_after_upshift,
    gear_step,
    engine_speed_drop,
    largest_step,
    engine_speed_in_run,
    first_gear_overall,
    top_gear_cruise,
    old_top_gear,
    old_without_slip,
    old_cruise,
    engine_speed_saved,
    share_saved,
    saved_without_slip,
    fastest_shaft,
  };
}

function nameOrdinal(n: number): string {
  const teen = n % 100 >= 11 && n % 100 <= 13;
  const ending = teen ? 'th' : (['th', 'st', 'nd', 'rd'][n % 10] ?? 'th');
  return `${n}${ending}`;
}

function findLargestUpTo(list: readonly number[], limit: number): number {
  return list.reduce((best, x) => (x <= limit && x > best ? x : best), -Infinity);
}
