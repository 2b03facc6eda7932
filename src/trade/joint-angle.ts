import type { FunctionDeclaration, Parameter } from '../language/functions/declaration.ts';
import { ANGLE } from './universal-joint.ts';

type Vector = readonly [rearward: number, aside: number, down: number];

const SOURCE = 'derived: each line a direction (1, tan of the plan angle, tan of the slope)';
const VALIDITY =
  'slopes and plan angles below 90°. An inclinometer reads the true slope and not its side view: below 5° of plan angle the two differ by less than 0.02°';

export const JOINT_ANGLE: FunctionDeclaration = {
  name: 'joint_angle',
  doc: 'Working angle between two lines, each given by its slope in side view and its angle in plan.',
  parameters: [...lineOf('one'), ...lineOf('other')],
  result: { shape: 'lifted', dimension: ANGLE },
  work: {
    type: 'each',
    run: (...lines) => (lines.some(isUpright) ? Number.NaN : workingAngle(lines)),
    refuse: refuseUpright,
  },
  example: ['joint_angle(3 deg, 0 deg, 1 deg, 0 deg)', '2 deg'],
  source: SOURCE,
  validity: VALIDITY,
};

export const BEND_TWIST: FunctionDeclaration = {
  name: 'bend_twist',
  doc: 'How far the bend plane of the rear joint is turned from that of the front one about the shaft, clockwise looking forward; 0 where gearbox, shaft and pinion lie in one plane.',
  parameters: [...lineOf('front'), ...lineOf('shaft'), ...lineOf('rear')],
  result: { shape: 'lifted', dimension: ANGLE },
  work: {
    type: 'each',
    run: (...lines) => (lines.some(isUpright) ? Number.NaN : bendTwist(lines)),
    refuse: refuseUpright,
  },
  example: ['bend_twist(0 deg, 0 deg, 3 deg, 0 deg, 0 deg, 0 deg)', '0 deg'],
  source: SOURCE,
  validity: `${VALIDITY}. A joint that is not bent has no plane and counts as 0`,
};

function lineOf(name: string): readonly Parameter[] {
  return [
    {
      name: `${name}_slope`,
      shape: 'either',
      dimension: ANGLE,
      doc: `slope of the ${name} line, positive down to the rear`,
    },
    {
      name: `${name}_plan`,
      shape: 'either',
      dimension: ANGLE,
      doc: `plan angle of the ${name} line, positive to the right toward the rear, looking forward`,
    },
  ];
}

/** By the arc tangent: the arc cosine loses half its digits near 0. */
function workingAngle([slope1, plan1, slope2, plan2]: readonly number[]): number {
  const [one, other] = [direction(slope1!, plan1!), direction(slope2!, plan2!)];
  return Math.atan2(length(cross(one, other)), dot(one, other));
}

function bendTwist([slope1, plan1, slope2, plan2, slope3, plan3]: readonly number[]): number {
  const shaft = direction(slope2!, plan2!);
  const front = cross(direction(slope1!, plan1!), shaft);
  const rear = cross(shaft, direction(slope3!, plan3!));
  const turn = Math.atan2(dot(cross(front, rear), shaft) / length(shaft), dot(front, rear));
  return halfTurn(turn);
}

/** A plane turned by half a turn is the same plane: −90° to 90°. */
function halfTurn(turn: number): number {
  const left = turn - Math.PI * Math.round(turn / Math.PI);
  return Math.abs(left) < 1e-12 ? 0 : left;
}

function direction(slope: number, plan: number): Vector {
  return [1, Math.tan(plan), Math.tan(slope)];
}

function cross([a, b, c]: Vector, [d, e, f]: Vector): Vector {
  return [b * f - c * e, c * d - a * f, a * e - b * d];
}

function dot([a, b, c]: Vector, [d, e, f]: Vector): number {
  return a * d + b * e + c * f;
}

function length(vector: Vector): number {
  return Math.hypot(...vector);
}

function isUpright(angle: number): boolean {
  return Math.abs(angle) >= Math.PI / 2;
}

function refuseUpright(...lines: number[]): string | undefined {
  return lines.some(isUpright)
    ? 'a line of the driveline stands upright or points forward'
    : undefined;
}
