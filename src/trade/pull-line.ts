import type { QuantityList } from '../language/kind.ts';

/** The engine and what starts the car; SI. */
export interface Drive {
  /** Engine speeds of the torque curve, rising, and the torque that reaches the wheels' gears there. */
  readonly speeds: QuantityList;
  readonly torques: QuantityList;
  /** The engine is not taken beyond this. */
  readonly limit: number;
  /** Engine speed at which clutch or converter slips until the road has caught up. */
  readonly launchSpeed: number;
  /** Torque out of the converter for each torque in, at a standstill; 1 for a clutch. */
  readonly multiplication: number;
  /** Share of its speed that the converter loses once it has coupled; 0 for a clutch. */
  readonly slip: number;
}

/** Pull at the wheels over road speed in one gear: straight lines between points, from a standstill up. */
export interface PullLine {
  readonly speeds: readonly number[];
  readonly pulls: readonly number[];
}

/**
 * The pull of one gear, grip and road load left out.
 *
 * Below the launch speed the engine holds that speed and the torque falls in a straight line from
 * its multiple at a standstill to 1 at coupling; above it follows the curve. The line ends where
 * the engine reaches its limit or its curve ends.
 *
 * @param turns of the engine for the road covered in this gear, rad/m
 */
export function createPullLine(drive: Drive, turns: number): PullLine {
  const engine = engineSpeeds(drive);
  const torques = engine.map((speed) => torqueAt(drive, speed));
  return {
    speeds: [0, ...engine.map((speed) => (speed * (1 - drive.slip)) / turns)],
    pulls: [torques[0]! * drive.multiplication * turns, ...torques.map((torque) => torque * turns)],
  };
}

/** From the launch to the limit, with every corner of the curve between. */
function engineSpeeds({ speeds, limit, launchSpeed }: Drive): readonly number[] {
  const launch = Math.max(launchSpeed, speeds[0]!);
  const most = Math.max(launch, Math.min(limit, speeds[speeds.length - 1]!));
  const between = Array.from(speeds).filter((speed) => speed > launch && speed < most);
  return most > launch ? [launch, ...between, most] : [launch];
}

function torqueAt({ speeds, torques }: Drive, speed: number): number {
  return readLine(speeds, torques, speed);
}

/** The pull at a road speed; beyond the end of the line its last value. */
export function pullAt({ speeds, pulls }: PullLine, speed: number): number {
  return readLine(speeds, pulls, speed);
}

/** The road speed at which clutch or converter has stopped slipping. */
export function closingSpeed({ speeds }: PullLine): number {
  return speeds[1]!;
}

/** The fastest that the gear allows. */
export function lastSpeed({ speeds }: PullLine): number {
  return speeds[speeds.length - 1]!;
}

/** Along straight lines between points whose places rise; level beyond both ends. */
function readLine(xs: ArrayLike<number>, ys: ArrayLike<number>, x: number): number {
  const last = xs.length - 1;
  if (!(x > xs[0]!)) return ys[0]!;
  if (x >= xs[last]!) return ys[last]!;
  let i = 1;
  while (xs[i]! <= x) i += 1;
  const share = (x - xs[i - 1]!) / (xs[i]! - xs[i - 1]!);
  return ys[i - 1]! + share * (ys[i]! - ys[i - 1]!);
}
