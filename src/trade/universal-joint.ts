import type { FunctionDeclaration } from '../language/functions/declaration.ts';
import type { QuantityList, Value } from '../language/kind.ts';
import type { Dimension } from '../units/dimension.ts';

export const ANGLE: Dimension = [0, 0, 0, 1];
const TURNING_SPEED: Dimension = [0, 0, -1, 1];
const TURNING_ACCELERATION: Dimension = [0, 0, -2, 1];
/** Beyond this a cross joint of a driveshaft jams or has lost most of its capacity. */
const STEEPEST = (30 * Math.PI) / 180;

const angle = {
  name: 'angle',
  shape: 'either',
  dimension: ANGLE,
  doc: 'working angle of the joint',
} as const;

const VALIDITY =
  'one cross joint, rigid and without play, up to 30° of working angle; a real joint adds friction, play and the give of the shaft';

export const JOINT_SPEED_RATIO: FunctionDeclaration = {
  name: 'joint_speed_ratio',
  doc: 'Speed of the driven yoke for each speed of the driving one, at one place of the turn; the turn counts from where the driven yoke is fastest.',
  parameters: [
    angle,
    { name: 'turn', shape: 'either', dimension: ANGLE, doc: 'how far the driving yoke has turned' },
  ],
  result: { shape: 'lifted' },
  work: {
    type: 'each',
    run: (bend, turn) => (isBent(bend) ? Number.NaN : speedRatio(bend, turn)),
    refuse: refuseBent,
  },
  example: ['joint_speed_ratio(60 deg, turn: 0 deg)', '2'],
  source: "published: Mechanical Engineer's Data Handbook, p. 72",
  validity: VALIDITY,
  outside: tooSteep,
};

export const JOINT_LAG: FunctionDeclaration = {
  name: 'joint_lag',
  doc: 'How far the driven yoke of one joint runs ahead of the driving one, and as far behind, in every half turn.',
  parameters: [angle],
  result: { shape: 'lifted', dimension: ANGLE },
  work: {
    type: 'each',
    run: (bend) => (isBent(bend) ? Number.NaN : largestLag(bend)),
    refuse: refuseBent,
  },
  example: ['joint_lag(60 deg)', 'atan(0.5 / sqrt(2))'],
  source: 'published, second-hand: Baranyi, Design News, 1 September 1969',
  validity: VALIDITY,
  outside: tooSteep,
};

export const JOINT_ACCELERATION: FunctionDeclaration = {
  name: 'joint_acceleration',
  doc: 'Largest angular acceleration of the driven yoke while the driving one turns evenly.',
  parameters: [
    angle,
    {
      name: 'speed',
      shape: 'either',
      dimension: TURNING_SPEED,
      doc: 'turning speed of the driving yoke',
    },
  ],
  result: { shape: 'lifted', dimension: TURNING_ACCELERATION },
  work: {
    type: 'each',
    run: (bend, speed) => (isBent(bend) ? Number.NaN : peakAcceleration(bend) * speed ** 2),
    refuse: refuseBent,
  },
  example: ['round(joint_acceleration(3 deg, speed: 5000 rpm), step: 0.1 rad/s^2)', '752 rad/s^2'],
  source:
    'derived: the speed ratio differentiated, at the place where it is steepest. For small angles it is the angle squared times the speed squared.',
  validity: VALIDITY,
  outside: tooSteep,
};

/** Speed of the driven yoke for each speed of the driving one; angles in rad. */
export function speedRatio(bend: number, turn: number): number {
  return Math.cos(bend) / (1 - (Math.cos(turn) * Math.sin(bend)) ** 2);
}

/** Angle that the driven yoke has turned through when the driving one has turned through `turn`, rad. */
export function drivenTurn(bend: number, turn: number): number {
  return Math.atan2(Math.sin(turn), Math.cos(turn) * Math.cos(bend));
}

/** Half of what the driven yoke wanders to and fro against the driving one, rad. */
export function largestLag(bend: number): number {
  return Math.atan((1 - Math.cos(bend)) / (2 * Math.sqrt(Math.cos(bend))));
}

/**
 * Largest angular acceleration of the driven yoke, for a driving speed of 1 rad/s. The acceleration
 * is sin²β cos β sin 2θ / (1 − cos²θ sin²β)²; where its slope is nought, cos 2θ solves a quadratic.
 */
function peakAcceleration(bend: number): number {
  const s = Math.sin(bend) ** 2;
  const half = 1 - s / 2;
  const cos2 = (2 * s) / (half + Math.sqrt(half ** 2 + 2 * s ** 2));
  const sin2 = Math.sqrt(1 - cos2 ** 2);
  return (Math.cos(bend) * s * sin2) / (1 - (s * (1 + cos2)) / 2) ** 2;
}

/** True where the joint is bent so far that it cannot turn. */
export function isBent(bend: number): boolean {
  return Math.abs(bend) >= Math.PI / 2;
}

export function refuseBent(...bends: number[]): string | undefined {
  return isBent(bends[0]!) ? 'a joint bent to a right angle or beyond does not turn' : undefined;
}

function tooSteep(bend: Value): string | undefined {
  return isBeyond(bend, STEEPEST)
    ? 'a cross joint of a driveshaft is not made to run at more than 30°'
    : undefined;
}

/** True where the size of a number, or of any number of a list, is above a limit. */
export function isBeyond(value: Value, limit: number): boolean {
  const numbers = typeof value === 'number' ? [value] : (value as QuantityList);
  return numbers.some((number) => Math.abs(number) > limit);
}
