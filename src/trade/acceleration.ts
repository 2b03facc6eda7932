import type { FunctionDeclaration, Parameter } from '../language/functions/declaration.ts';
import type { QuantityList, Value } from '../language/kind.ts';
import type { Dimension } from '../units/dimension.ts';
import { LENGTH, MASS, SPEED, TIME, TURNING_SPEED } from './dimensions.ts';
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
import { createPullLine, type Drive } from './pull-line.ts';
import { distanceAfter, speedAfter, timeOverDistance, timeToSpeed } from './read-run.ts';
import { rememberLast } from './remember.ts';
import { createRun, LONGEST_RUN, type Run, type Runner } from './run.ts';

const CAR: readonly Parameter[] = [
  ...CURVE,
  TURNS,
  {
    name: 'masses',
    shape: 'list',
    dimension: MASS,
    doc: 'mass of the car in each gear, what turns with it counted in',
  },
  ROLLING,
  AIR,
  GRIP,
  {
    name: 'leave_at',
    shape: 'either',
    dimension: TURNING_SPEED,
    doc: 'engine speed at which to change up: one for all gears or one for each; the last gear is never left',
  },
  LIMIT,
  {
    name: 'shift_time',
    shape: 'quantity',
    dimension: TIME,
    doc: 'time without drive at each shift; 0 for an automatic',
  },
  ...START,
  DOUBLES_AT,
];

const SOURCE =
  'derived: force over mass, integrated by the Runge-Kutta method of fourth order in steps of 0.1 s; mass factor for what turns from memory, Gillespie, Fundamentals of Vehicle Dynamics';
const VALIDITY =
  'a flat dry road, still air, a warm engine on its curve, the first minute; leaves out wheelspin, the flywheel’s own energy, the driver, heat and height';

/** Runs of the car as it was and as it will be, each with and without what a slider has just moved. */
const runOf = rememberLast(4, (values) => createRun(createRunner(values)));

export const TIME_TO_SPEED = askRun({
  name: 'time_to_speed',
  doc: 'The time from a standstill to a speed, flat out through the gears.',
  asked: { name: 'speed', shape: 'quantity', dimension: SPEED, doc: 'speed to reach' },
  dimension: TIME,
  read: timeToSpeed,
  missing: 'the car does not reach this speed within a minute',
  example: ['20 m/s', '10 s'],
});

export const TIME_OVER_DISTANCE = askRun({
  name: 'time_over_distance',
  doc: 'The time from a standstill over a distance, flat out through the gears.',
  asked: { name: 'distance', shape: 'quantity', dimension: LENGTH, doc: 'distance to cover' },
  dimension: TIME,
  read: timeOverDistance,
  missing: 'the car does not cover this distance within a minute',
  example: ['100 m', '10 s'],
});

export const SPEED_OVER_DISTANCE = askRun({
  name: 'speed_over_distance',
  doc: 'The speed at the end of a distance from a standstill, flat out through the gears.',
  asked: { name: 'distance', shape: 'quantity', dimension: LENGTH, doc: 'distance to cover' },
  dimension: SPEED,
  read: (run, distance) => {
    const time = timeOverDistance(run, distance);
    return time === undefined ? undefined : speedAfter(run, time);
  },
  missing: 'the car does not cover this distance within a minute',
  example: ['100 m', '20 m/s'],
});

export const SPEED_AFTER = askRun({
  name: 'speed_after',
  doc: 'The speed at a time after a standing start, flat out through the gears.',
  asked: { name: 'time', shape: 'quantity', dimension: TIME, doc: 'time since the start' },
  dimension: SPEED,
  read: (run, time) => (isWithinRun(time) ? speedAfter(run, time) : undefined),
  missing: 'a run is worked from 0 to 60 s',
  example: ['10 s', '20 m/s'],
});

export const DISTANCE_AFTER = askRun({
  name: 'distance_after',
  doc: 'The distance covered at a time after a standing start, flat out through the gears.',
  asked: { name: 'time', shape: 'quantity', dimension: TIME, doc: 'time since the start' },
  dimension: LENGTH,
  read: (run, time) => (isWithinRun(time) ? distanceAfter(run, time) : undefined),
  missing: 'a run is worked from 0 to 60 s',
  example: ['10 s', '100 m'],
});

interface Question {
  readonly name: string;
  readonly doc: string;
  readonly asked: Parameter;
  readonly dimension: Dimension;
  /** The answer, or undefined where the run has none. */
  readonly read: (run: Run, asked: number) => number | undefined;
  readonly missing: string;
  /** What is asked of a car of 1 t that is pushed by 2 kN, and the answer. */
  readonly example: readonly [asked: string, answer: string];
}

function askRun(question: Question): FunctionDeclaration {
  const { name, doc, asked, dimension, read, missing, example } = question;
  return {
    name,
    doc,
    parameters: [asked, ...CAR],
    result: { shape: 'quantity', dimension },
    work: {
      type: 'whole',
      run: (value, ...car) => read(runOf(car), value as number)!,
      refuse: (value, ...car) =>
        refuseCar(car) ?? (read(runOf(car), value as number) === undefined ? missing : undefined),
    },
    example: [
      `${name}(${example[0]}, [1000 rpm, 6000 rpm], [2 kN * 1 m / 1 rad, 2 kN * 1 m / 1 rad], [1 rad/m], [1000 kg], rolling: 0 N, air: 0 kg/m, grip: 5 kN, leave_at: 6000 rpm, limit: 6000 rpm, shift_time: 0 s)`,
      example[1],
    ],
    source: SOURCE,
    validity: VALIDITY,
    outside: (_, ...car) => outsideDrive(driveOf(car)),
  };
}

function isWithinRun(time: number): boolean {
  return time >= 0 && time <= LONGEST_RUN;
}

function driveOf(car: readonly Value[]): Drive {
  return createDrive(car.slice(0, 2), car[8]!, car.slice(10, 13));
}

function createRunner(car: readonly Value[]): Runner {
  const drive = driveOf(car);
  const turns = Array.from(car[2] as QuantityList);
  const leaveAt = listLeaving(car);
  return {
    lines: turns.map((each) => createPullLine(drive, each)),
    leaveAt: turns.map((each, i) => (leaveAt[i]! * (1 - drive.slip)) / each),
    masses: Array.from(car[3] as QuantityList),
    load: { rolling: car[4] as number, air: car[5] as number, doublesAt: car[13] as number },
    grip: car[6] as number,
    shiftTime: car[9] as number,
  };
}

/** Engine speed at which each gear is left; the last one ends at the limit. */
function listLeaving(car: readonly Value[]): readonly number[] {
  const [turns, leaveAt, limit] = [car[2] as QuantityList, car[7]!, car[8] as number];
  return Array.from(turns, (_, i) => {
    if (i === turns.length - 1) return limit;
    return Math.min(limit, typeof leaveAt === 'number' ? leaveAt : (leaveAt as QuantityList)[i]!);
  });
}

function refuseCar(car: readonly Value[]): string | undefined {
  const [turns, masses] = [car[2], car[3]] as QuantityList[];
  const leaveAt = car[7]!;
  const gears = turns!.length;
  if (masses!.length !== gears) return `${gears} gears need ${gears} masses`;
  if (typeof leaveAt !== 'number' && (leaveAt as QuantityList).length !== gears) {
    return `${gears} gears need ${gears} engine speeds to change up at, or one for all`;
  }
  if (masses!.some((mass) => mass <= 0)) return 'a mass is above 0';
  if (!((car[9] as number) >= 0)) return 'a shift takes no less than no time';
  return refuseDrive(driveOf(car), turns!);
}
