import type { FunctionDeclaration, Parameter } from '../language/functions/declaration.ts';
import type { Value } from '../language/kind.ts';
import { ANGLE, drivenTurn, isBent, isBeyond, speedRatio } from './universal-joint.ts';

/** Up to here the equivalent angle is within 0.2 % of the two joints worked exactly. */
const SMALL = (6 * Math.PI) / 180;
/** Places of half a turn at which the exact pair is worked; what they miss is a part in 10⁵. */
const PLACES = 720;

const PAIR: readonly Parameter[] = [
  { name: 'front', shape: 'either', dimension: ANGLE, doc: 'working angle of the front joint' },
  { name: 'rear', shape: 'either', dimension: ANGLE, doc: 'working angle of the rear joint' },
  {
    name: 'phase',
    shape: 'either',
    dimension: ANGLE,
    doc: 'angle between the two bend planes, less the angle between the two yokes of the shaft; 0 where they match',
  },
];

const EXACT =
  'rigid cross joints without play, on a rigid shaft, the gearbox turning evenly; angles below 90°';

export const EQUIVALENT_ANGLE: FunctionDeclaration = {
  name: 'equivalent_angle',
  doc: 'Working angle of a single joint that would shake the pinion as much as these two together.',
  parameters: PAIR,
  result: { shape: 'lifted', dimension: ANGLE },
  work: { type: 'each', run: equivalentAngle, refuse: () => undefined },
  example: ['equivalent_angle(5 deg, 4 deg, phase: 0 deg)', '3 deg'],
  source:
    'from memory: SAE AE-7, for yokes in line and at right angles; any other phase derived, the second harmonics of both joints added as arrows',
  validity: 'angles up to 6°, there within 0.2 %',
  outside: (front, rear) =>
    isBeyond(front!, SMALL) || isBeyond(rear!, SMALL)
      ? 'the rule of the equivalent angle drifts from the truth above 6° of working angle'
      : undefined,
};

export const PAIR_SWING: FunctionDeclaration = {
  name: 'pair_swing',
  doc: 'How far the pinion runs ahead of an even turn, and as far behind, behind two joints; worked without the small-angle rule.',
  parameters: PAIR,
  result: { shape: 'lifted', dimension: ANGLE },
  work: {
    type: 'each',
    run: (front, rear, phase) =>
      isBent(front) || isBent(rear) ? Number.NaN : pairSwing(front, rear, phase),
    refuse: refusePair,
  },
  example: ['round(pair_swing(4 deg, 4 deg, phase: 0 deg), step: 0.001 deg)', '0 deg'],
  source: 'derived: both joints followed through half a turn, the rear one backwards',
  validity: EXACT,
};

export const PAIR_SPEED_RATIO: FunctionDeclaration = {
  name: 'pair_speed_ratio',
  doc: 'Speed of the pinion for each speed of the gearbox at one place of the turn, behind two joints.',
  parameters: [
    ...PAIR,
    { name: 'turn', shape: 'either', dimension: ANGLE, doc: 'how far the gearbox has turned' },
  ],
  result: { shape: 'lifted' },
  work: {
    type: 'each',
    run: (front, rear, phase, turn) =>
      isBent(front) || isBent(rear) ? Number.NaN : pairSpeedRatio(front, rear, phase, turn),
    refuse: refusePair,
  },
  example: ['pair_speed_ratio(60 deg, 0 deg, phase: 0 deg, turn: 0 deg)', '2'],
  source: 'derived: the speed ratios of both joints divided, at the places where their yokes stand',
  validity: EXACT,
};

/** Small-angle rule: β⁴ is the square of |β₁² − β₂² e^(2i phase)|. */
function equivalentAngle(front: number, rear: number, phase: number): number {
  const [a, b] = [front ** 2, rear ** 2];
  return Math.sqrt(Math.hypot(a - b * Math.cos(2 * phase), b * Math.sin(2 * phase)));
}

/**
 * Angle of the pinion for an angle of the gearbox. The rear joint is the front one seen in a mirror:
 * with equal angles and yokes in line it takes away what the front joint added.
 */
function pinionTurn(front: number, rear: number, phase: number, turn: number): number {
  return undrivenTurn(rear, drivenTurn(front, turn) - phase);
}

/** The driving yoke's angle for an angle of the driven one. */
function undrivenTurn(bend: number, turn: number): number {
  return Math.atan2(Math.sin(turn) * Math.cos(bend), Math.cos(turn));
}

function pairSwing(front: number, rear: number, phase: number): number {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < PLACES; i += 1) {
    const turn = (Math.PI * i) / PLACES;
    const ahead = wrap(pinionTurn(front, rear, phase, turn) + phase - turn);
    least = Math.min(least, ahead);
    most = Math.max(most, ahead);
  }
  return (most - least) / 2;
}

function pairSpeedRatio(front: number, rear: number, phase: number, turn: number): number {
  return speedRatio(front, turn) / speedRatio(rear, pinionTurn(front, rear, phase, turn));
}

/** The same angle within half a turn to either side. */
function wrap(turn: number): number {
  return turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI));
}

function refusePair(front: Value, rear: Value): string | undefined {
  return isBent(front as number) || isBent(rear as number)
    ? 'a joint bent to a right angle or beyond does not turn'
    : undefined;
}
