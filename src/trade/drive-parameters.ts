import type { Parameter } from '../language/functions/declaration.ts';
import type { QuantityList, Value } from '../language/kind.ts';
import {
  FORCE,
  MASS_PER_LENGTH,
  SPEED,
  TORQUE,
  TURN_PER_LENGTH,
  TURNING_SPEED,
} from './dimensions.ts';
import type { Drive } from './pull-line.ts';

// Parameters that the functions of pull, hills, top speed and acceleration have in common.

export const CURVE: readonly Parameter[] = [
  {
    name: 'curve_speeds',
    shape: 'list',
    dimension: TURNING_SPEED,
    doc: 'engine speeds of the torque curve, rising',
  },
  {
    name: 'curve_torques',
    shape: 'list',
    dimension: TORQUE,
    doc: 'torque at these speeds, less what the driveline loses',
  },
];

export const TURNS: Parameter = {
  name: 'turns',
  shape: 'list',
  dimension: TURN_PER_LENGTH,
  doc: 'turns of the engine for the road covered, 1st gear first',
};

export const LIMIT: Parameter = {
  name: 'limit',
  shape: 'quantity',
  dimension: TURNING_SPEED,
  doc: 'engine speed that is not exceeded',
};

export const ROLLING: Parameter = {
  name: 'rolling',
  shape: 'quantity',
  dimension: FORCE,
  doc: 'rolling resistance at a walking pace',
};

export const AIR: Parameter = {
  name: 'air',
  shape: 'quantity',
  dimension: MASS_PER_LENGTH,
  doc: 'drag of the air for each square of the speed: half of air density times drag area',
};

export const GRIP: Parameter = {
  name: 'grip',
  shape: 'quantity',
  dimension: FORCE,
  doc: 'most that the driven tyres can push',
};

/** What starts the car. Left out: a clutch that slips at the lowest speed of the curve. */
export const START: readonly Parameter[] = [
  {
    name: 'launch_speed',
    shape: 'quantity',
    dimension: TURNING_SPEED,
    fallback: 0,
    doc: 'engine speed held while clutch or converter slips; the lowest of the curve when left out',
  },
  {
    name: 'multiplication',
    shape: 'quantity',
    fallback: 1,
    doc: 'torque of the converter at a standstill, out for in; 1 for a clutch',
  },
  {
    name: 'slip',
    shape: 'quantity',
    fallback: 0,
    doc: 'share of its speed that the converter loses; 0 for a clutch',
  },
];

/** 147 ft/s. Source: from memory, Mannering, Principles of Highway Engineering and Traffic Analysis. */
export const ROLLING_DOUBLES_AT = 147 * 0.3048;

export const DOUBLES_AT: Parameter = {
  name: 'doubles_at',
  shape: 'quantity',
  dimension: SPEED,
  fallback: ROLLING_DOUBLES_AT,
  doc: 'speed at which rolling resistance has doubled; 147 ft/s when left out',
};

/** The values of CURVE, LIMIT and START, in that order, as one thing. */
export function createDrive(curve: readonly Value[], limit: Value, start: readonly Value[]): Drive {
  return {
    speeds: curve[0] as QuantityList,
    torques: curve[1] as QuantityList,
    limit: limit as number,
    launchSpeed: start[0] as number,
    multiplication: start[1] as number,
    slip: start[2] as number,
  };
}

/** Why nothing can be worked with this engine and these gears. */
export function refuseDrive(drive: Drive, turns: QuantityList): string | undefined {
  const { speeds, torques, slip, multiplication } = drive;
  if (speeds.length === 0) return 'the torque curve has no points';
  if (speeds.length !== torques.length) {
    return `the torque curve has ${speeds.length} speeds and ${torques.length} torques`;
  }
  if (speeds.some((speed, i) => speed <= (speeds[i - 1] ?? 0))) {
    return 'the speeds of the torque curve must be above 0 and rise from one to the next';
  }
  if (turns.length === 0) return 'there is no gear';
  if (turns.some((each) => each <= 0)) return 'a gear needs turns above 0';
  if (turns.some((each, i) => i > 0 && each >= turns[i - 1]!)) {
    return 'the gears must stand in order, 1st gear first';
  }
  if (!(slip >= 0 && slip < 1)) return 'slip is a share from 0 to less than 1';
  if (!(multiplication >= 1)) return 'a converter gives out at least the torque that goes in';
  return drive.limit > 0 ? undefined : 'the engine speed not to be exceeded must be above 0';
}

/** Beyond it the straight fall of the multiple would give out more power than goes in. */
const MOST_MULTIPLICATION = 2.5;

/** What in a drive lies beyond the model of clutch and converter. */
export function outsideDrive({ speeds, limit, multiplication }: Drive): string | undefined {
  if (multiplication > MOST_MULTIPLICATION) {
    return `a converter that multiplies by more than ${MOST_MULTIPLICATION} would give out more power here than it takes in`;
  }
  return limit > speeds[speeds.length - 1]! * (1 + 1e-9)
    ? 'the torque curve ends before the limit of the engine; each gear is taken to end with the curve'
    : undefined;
}
