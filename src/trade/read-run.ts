import type { Run } from './run.ts';

/** Speed of a recorded run at a time. */
export function speedAfter(run: Run, time: number): number {
  const i = stretchAt(run.times, time);
  return curve(...speedEnds(run, i), time - run.times[i - 1]!);
}

/** Distance of a recorded run at a time. */
export function distanceAfter(run: Run, time: number): number {
  const i = stretchAt(run.times, time);
  return curve(...distanceEnds(run, i), time - run.times[i - 1]!);
}

/** When the car first has a speed; undefined where it does not within the run. */
export function timeToSpeed(run: Run, speed: number): number | undefined {
  if (speed <= 0) return 0;
  const i = run.speeds.findIndex((each) => each >= speed);
  return i < 0 ? undefined : run.times[i - 1]! + meet(speedEnds(run, i), speed);
}

/** When the car has covered a distance; undefined where it has not within the run. */
export function timeOverDistance(run: Run, distance: number): number | undefined {
  if (distance <= 0) return 0;
  const i = run.distances.findIndex((each) => each >= distance);
  return i < 0 ? undefined : run.times[i - 1]! + meet(distanceEnds(run, i), distance);
}

/** A stretch of a curve: its length, and value and slope at both ends. */
type Ends = readonly [length: number, y0: number, slope0: number, y1: number, slope1: number];

function speedEnds({ times, speeds, starts, ends }: Run, i: number): Ends {
  return [times[i]! - times[i - 1]!, speeds[i - 1]!, starts[i]!, speeds[i]!, ends[i]!];
}

function distanceEnds({ times, speeds, distances }: Run, i: number): Ends {
  return [times[i]! - times[i - 1]!, distances[i - 1]!, speeds[i - 1]!, distances[i]!, speeds[i]!];
}

/** Index of the end of the stretch that a time lies in. */
function stretchAt(times: readonly number[], time: number): number {
  let [low, high] = [0, times.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (times[middle]! <= time) low = middle;
    else high = middle;
  }
  return high;
}

/** Hermite's cubic through both ends, with their slopes. */
function curve(
  length: number,
  y0: number,
  slope0: number,
  y1: number,
  slope1: number,
  at: number,
): number {
  if (length === 0) return y1;
  const u = Math.min(1, at / length);
  const w = 1 - u;
  return (
    w * w * (y0 * (1 + 2 * u) + length * slope0 * u) +
    u * u * (y1 * (3 - 2 * u) - length * slope1 * w)
  );
}

/** How far into a rising stretch a value is met. */
function meet(ends: Ends, wanted: number): number {
  let [low, high] = [0, ends[0]];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (curve(...ends, middle) < wanted) low = middle;
    else high = middle;
  }
  return high;
}
