import { all, create, type EvalFunction } from 'mathjs';

/**
 * The formulas of both sheets in mathjs, with its units, as the peer that does comparable work: it
 * keeps a unit with every number and checks dimensions, but while it computes. Formulas that have no
 * counterpart there (names of gears, the largest speed up to a limit, shims) are left out, which is
 * to its advantage.
 */
export interface Peer {
  /** Works all formulas; the scope that comes back holds results by their names. */
  readonly solve: () => Map<string, unknown>;
  /** Names of what is worked. */
  readonly formulas: readonly string[];
}

const math = create(all!);
math.createUnit('rpm', '1 cycle/minute');

const GEARING_GIVENS = {
  tyre_width: '205 mm',
  aspect_ratio: '0.6',
  rim_diameter: '15 inch',
  rolling_factor: '3.05',
  axle_ratio: '3.25',
  gear_ratios: '[3.15, 1.95, 1.35, 1, 0.74]',
  redline: '5500 rpm',
  cruise_speed: '70 mile/hour',
  old_ratios: '[2.4, 1.5, 1]',
  converter_slip: '0.04',
} as const;

const GEARING_WORK = {
  tyre_diameter: 'rim_diameter + 2 * tyre_width * aspect_ratio',
  rolling_circumference: 'rolling_factor * tyre_diameter',
  distance_per_turn: 'rolling_circumference / (1 cycle)',
  turns_per_mile: '1 / distance_per_turn',
  geometric_turns: '(1 cycle) / (pi * tyre_diameter)',
  pi_too_long: 'pi * tyre_diameter / rolling_circumference - 1',
  rollout_per_diameter: 'rolling_circumference / tyre_diameter',
  ratios: 'sort(gear_ratios, "desc")',
  wheel_speed: 'cruise_speed / distance_per_turn',
  engine_speed_at_cruise: 'wheel_speed * axle_ratio * ratios',
  road_speed_at_redline: 'dotDivide(redline, axle_ratio * ratios) * distance_per_turn',
  engine_speed_after_upshift: 'dotDivide(redline * ratios[2:end], ratios[1:end-1])',
  gear_step: 'ratios[1:end-1] ./ ratios[2:end]',
  engine_speed_drop: '1 - 1 ./ gear_step',
  largest_step: 'max(gear_step)',
  first_gear_overall: 'ratios[1] * axle_ratio',
  top_gear_cruise: 'engine_speed_at_cruise[end]',
  old_top_gear: 'min(old_ratios)',
  old_without_slip: 'wheel_speed * axle_ratio * old_top_gear',
  old_cruise: 'old_without_slip / (1 - converter_slip)',
  engine_speed_saved: 'old_cruise - top_gear_cruise',
  share_saved: 'engine_speed_saved / old_cruise',
  saved_without_slip: 'old_without_slip - top_gear_cruise',
  fastest_shaft: 'redline / ratios[end]',
} as const;

const BEARING_GIVENS = {
  finger_reading: '3.212 inch',
  bearing_reading: '3.047 inch',
  straightedge: '0.25 inch',
  wanted_gap: '0.15 inch',
  disc_free: '0.33 inch',
  disc_clamped: '0.3 inch',
  lever_ratio: '3.5',
  collar_pitch: '1.5 mm/cycle',
  disc_wear: '0.035 inch',
} as const;

const BEARING_WORK = {
  gap: 'finger_reading - straightedge - bearing_reading + straightedge',
  gap_one_side: 'finger_reading - (bearing_reading - straightedge)',
  one_side_error: 'gap_one_side - gap',
  cushion: 'disc_free - disc_clamped',
  gap_lost_to_cushion: 'cushion * lever_ratio',
  out_by: 'gap - wanted_gap',
  collar_turns: 'out_by / collar_pitch',
  finger_travel: 'disc_wear * lever_ratio',
  gap_when_worn: 'gap - finger_travel',
  wear_allowed: 'gap / lever_ratio',
} as const;

export function createGearingPeer(): Peer {
  return createPeer(GEARING_GIVENS, GEARING_WORK);
}

export function createBearingPeer(): Peer {
  return createPeer(BEARING_GIVENS, BEARING_WORK);
}

/** Everything is parsed beforehand: only the working is timed. */
function createPeer(
  givens: Readonly<Record<string, string>>,
  work: Readonly<Record<string, string>>,
): Peer {
  const readings = Object.entries(givens).map(
    ([name, text]) => [name, math.evaluate(text)] as const,
  );
  const formulas = Object.entries(work).map(([name, text]) => [name, math.compile(text)] as const);
  return { solve: () => workAll(readings, formulas), formulas: Object.keys(work) };
}

function workAll(
  readings: readonly (readonly [string, unknown])[],
  formulas: readonly (readonly [string, EvalFunction])[],
): Map<string, unknown> {
  const scope = new Map<string, unknown>(readings);
  for (const [name, formula] of formulas) scope.set(name, formula.evaluate(scope));
  return scope;
}

/** A result in SI with angles in radians: a number, or the numbers of a list. */
export function toSi(value: unknown): number | readonly number[] {
  if (typeof value === 'number') return value;
  if (math.isMatrix(value))
    return (value.toArray() as unknown[]).map((item) => toSi(item) as number);
  if (math.isUnit(value)) return value.toSI().toNumeric() as number;
  throw new Error(`no number: ${String(value)}`);
}
