import type { FunctionDeclaration } from '../language/functions/declaration.ts';
import type { QuantityList, Value } from '../language/kind.ts';
import { FORCE, SPEED } from './dimensions.ts';
import {
  AIR,
  CURVE,
  createDrive,
  DOUBLES_AT,
  GRIP,
  LIMIT,
  outsideDrive,
  ROLLING,
  refuseDrive,
  START,
  TURNS,
} from './drive-parameters.ts';
import {
  closingSpeed,
  createPullLine,
  type Drive,
  lastSpeed,
  type PullLine,
  pullAt,
} from './pull-line.ts';
import type { RoadLoad } from './road-load.ts';
import { bestOf } from './spare-line.ts';

const SOURCE =
  'derived: torque times turns of the engine for the road covered; Gillespie, Fundamentals of Vehicle Dynamics, has the same (from memory)';
const VALIDITY =
  'full throttle, no wheelspin; clutch and converter as described in the parameters: a real converter holds no fixed engine speed';

/** Torque over road, in each gear. */
export const PULL_AT_SPEED: FunctionDeclaration = {
  name: 'pull_at_speed',
  doc: 'The force at the driven wheels in each gear at a road speed and full throttle; 0 in a gear whose engine would be past its limit.',
  parameters: [
    { name: 'speed', shape: 'quantity', dimension: SPEED, doc: 'road speed' },
    ...CURVE,
    TURNS,
    LIMIT,
    ...START,
  ],
  result: { shape: 'list', dimension: FORCE },
  work: {
    type: 'whole',
    run: (speed, ...rest) =>
      (rest[2] as QuantityList).map((turns) =>
        pullOrNone(createPullLine(driveOf(rest), turns), speed as number),
      ),
    refuse: (_, ...rest) => refuseDrive(driveOf(rest), rest[2] as QuantityList),
  },
  example: [
    'pull_at_speed(10 m/s, [1000 rpm, 6000 rpm], [200 N·m, 200 N·m], turns: [10 rad/m, 5 rad/m], limit: 6000 rpm)',
    '[2 kN, 1 kN]',
  ],
  source: SOURCE,
  validity: VALIDITY,
  outside: (_, ...rest) => outsideDrive(driveOf(rest)),
};

/** A hair beyond the end is rounding, not a gear that is finished. */
function pullOrNone(line: PullLine, speed: number): number {
  return speed <= lastSpeed(line) * (1 + 1e-12) ? pullAt(line, speed) : 0;
}

/** What a hill or the driver's foot may use. */
export const SPARE_PULL: FunctionDeclaration = {
  name: 'spare_pull',
  doc: 'The most that each gear pulls beyond what a level road asks for at the same speed, grip heeded: what is left for a hill. In 1st gear from a standstill, in the others no slower than clutch or converter is closed.',
  parameters: [...CURVE, TURNS, LIMIT, ROLLING, AIR, GRIP, ...START, DOUBLES_AT],
  result: { shape: 'list', dimension: FORCE },
  work: {
    type: 'whole',
    run: (...values) => {
      const drive = spareDrive(values);
      const load = spareLoad(values);
      const grip = values[6] as number;
      return (values[2] as QuantityList).map((turns, i) => {
        const line = createPullLine(drive, turns);
        return bestOf(line, load, grip, i === 0 ? 0 : closingSpeed(line)).spare;
      });
    },
    refuse: (...values) => refuseDrive(spareDrive(values), values[2] as QuantityList),
  },
  example: [
    'spare_pull([1000 rpm, 6000 rpm], [200 N·m, 200 N·m], [10 rad/m, 5 rad/m], 6000 rpm, rolling: 0 N, air: 0 kg/m, grip: 1.5 kN)',
    '[1.5 kN, 1 kN]',
  ],
  source: SOURCE,
  validity: VALIDITY,
  outside: (...values) => outsideDrive(spareDrive(values)),
};

/** Of the values in the order curve, turns, limit, start. */
function driveOf(rest: readonly Value[]): Drive {
  return createDrive(rest.slice(0, 2), rest[3]!, rest.slice(4, 7));
}

function spareDrive(values: readonly Value[]): Drive {
  return createDrive(values.slice(0, 2), values[3]!, values.slice(7, 10));
}

function spareLoad(values: readonly Value[]): RoadLoad {
  const [rolling, air, , , , , doublesAt] = values.slice(4) as number[];
  return { rolling: rolling!, air: air!, doublesAt: doublesAt! };
}
