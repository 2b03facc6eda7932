import { lastSpeed, type PullLine, pullAt } from './pull-line.ts';
import { loadAt, type RoadLoad } from './road-load.ts';
import { type Motion, stepMotion } from './runge-kutta.ts';

/** A car that is driven flat out from a standstill; SI. */
export interface Runner {
  /** One for each gear, 1st first. */
  readonly lines: readonly PullLine[];
  /** Road speed at which each gear is left; in the last gear the engine is held there. */
  readonly leaveAt: readonly number[];
  /** Mass in each gear, what turns with it counted in. */
  readonly masses: readonly number[];
  readonly load: RoadLoad;
  readonly grip: number;
  readonly shiftTime: number;
}

/** A run as recorded. Speed and distance at each time, and the acceleration to either side of it. */
export interface Run {
  readonly times: readonly number[];
  readonly speeds: readonly number[];
  readonly distances: readonly number[];
  /** Acceleration at the start and at the end of the stretch that ends at each time. */
  readonly starts: readonly number[];
  readonly ends: readonly number[];
}

/** A run is worked for a minute. */
export const LONGEST_RUN = 60;
/** Short enough that halving it moves no result by more than ten parts in a million. */
const STEP = 0.1;
/** Rounds of Newton's method to the moment of a shift. */
const ROUNDS = 6;

/** Works a run from a standstill. Gears follow one another; the drive is cut while one changes. */
export function createRun(runner: Runner, step = STEP): Run {
  const recorder = createRecorder();
  for (let gear = 0; gear < runner.lines.length; gear += 1) {
    if (gear > 0) coast(recorder, runner, gear, step);
    const isLast = gear === runner.lines.length - 1;
    if (!driveTo(recorder, runner, gear, step)) return recorder.run;
    if (isLast) recorder.hold();
  }
  return recorder.run;
}

type Rate = (speed: number) => number;

/** Full throttle in one gear; true where it was left before the minute was over. Mutates the record. */
function driveTo(recorder: Recorder, runner: Runner, gear: number, step: number): boolean {
  const { lines, masses, grip, load } = runner;
  const line = lines[gear]!;
  const leaveAt = Math.min(runner.leaveAt[gear]!, lastSpeed(line));
  const rate: Rate = (speed) => {
    const force = Math.min(pullAt(line, speed), grip) - loadAt(load, speed);
    return force < 0 && speed <= 0 ? 0 : force / masses[gear]!;
  };
  while (recorder.left() > 0) {
    if (recorder.last().speed >= leaveAt) return true;
    const length = Math.min(step, recorder.left());
    const next = stepMotion(rate, recorder.last(), length);
    if (next.speed < leaveAt) recorder.add(rate, next, length);
    else recorder.add(rate, ...partOf(rate, recorder.last(), length, leaveAt));
  }
  return false;
}

/** The part of a step after which a speed is just reached. */
function partOf(rate: Rate, from: Motion, step: number, wanted: number): [Motion, number] {
  let length = step;
  for (let i = 0; i < ROUNDS; i += 1) {
    const { speed } = stepMotion(rate, from, length);
    const slope = rate(speed);
    if (slope > 0) length = Math.min(step, Math.max(0, length + (wanted - speed) / slope));
  }
  return [{ ...stepMotion(rate, from, length), speed: wanted }, length];
}

/** The road alone while the gear changes. Mutates the record. */
function coast(recorder: Recorder, runner: Runner, gear: number, step: number): void {
  const mass = runner.masses[gear]!;
  const rate: Rate = (speed) => (speed > 0 ? -loadAt(runner.load, speed) / mass : 0);
  const time = Math.min(runner.shiftTime, recorder.left());
  const steps = Math.ceil(time / step);
  for (let i = 0; i < steps; i += 1) {
    const next = stepMotion(rate, recorder.last(), time / steps);
    recorder.add(rate, { ...next, speed: Math.max(0, next.speed) }, time / steps);
  }
}

type Recorder = ReturnType<typeof createRecorder>;

/** Owns the record of a run while it is made. */
function createRecorder() {
  const run = { times: [0], speeds: [0], distances: [0], starts: [0], ends: [0] };
  let now = 0;
  let motion: Motion = { speed: 0, distance: 0 };
  let lastRate: Rate | undefined;

  function add(rate: Rate, next: Motion, length: number): void {
    const end = run.ends[run.ends.length - 1]!;
    run.starts.push(rate === lastRate ? end : rate(motion.speed));
    run.ends.push(rate(next.speed));
    lastRate = rate;
    now += length;
    motion = next;
    run.times.push(now);
    run.speeds.push(next.speed);
    run.distances.push(next.distance);
  }

  return {
    run,
    add,
    last: () => motion,
    left: () => Math.max(0, LONGEST_RUN - now),
    /** The engine at its limit in top gear, to the end of the minute. */
    hold: () => {
      const length = Math.max(0, LONGEST_RUN - now);
      const distance = motion.distance + motion.speed * length;
      add(() => 0, { speed: motion.speed, distance }, length);
    },
  };
}
