import type { Run } from './run.ts';

/** Speed of a recorded run at a time. */
export function speedAfter(run: Run, time: number): number {
  const i = stretchAt(run.times, time);
  return valueAt(speedStretch(run, i), time - run.times[i - 1]!);
}

/** Distance of a recorded run at a time. */
export function distanceAfter(run: Run, time: number): number {
  const i = stretchAt(run.times, time);
  return valueAt(distanceStretch(run, i), time - run.times[i - 1]!);
}

/** When the car first has a speed; undefined where it does not within the run. */
export function timeToSpeed(run: Run, speed: number): number | undefined {
  if (speed <= 0) return 0;
  const i = run.speeds.findIndex((each) => each >= speed);
  return i < 0 ? undefined : run.times[i - 1]! + meet(speedStretch(run, i), speed);
}

/** When the car has covered a distance; undefined where it has not within the run. */
export function timeOverDistance(run: Run, distance: number): number | undefined {
  if (distance <= 0) return 0;
  const i = run.distances.findIndex((each) => each >= distance);
  return i < 0 ? undefined : run.times[i - 1]! + meet(distanceStretch(run, i), distance);
}

/** A stretch of a curve: how long it is, and value and slope at both ends. */
interface Stretch {
  readonly length: number;
  readonly from: number;
  readonly slopeFrom: number;
  readonly to: number;
  readonly slopeTo: number;
}

function speedStretch({ times, speeds, starts, ends }: Run, i: number): Stretch {
  return {
    length: times[i]! - times[i - 1]!,
    from: speeds[i - 1]!,
    slopeFrom: starts[i]!,
    to: speeds[i]!,
    slopeTo: ends[i]!,
  };
}

function distanceStretch({ times, speeds, distances }: Run, i: number): Stretch {
  return {
    length: times[i]! - times[i - 1]!,
    from: distances[i - 1]!,
    slopeFrom: speeds[i - 1]!,
    to: distances[i]!,
    slopeTo: speeds[i]!,
  };
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
function valueAt({ length, from, slopeFrom, to, slopeTo }: Stretch, at: number): number {
  if (length === 0) return to;
  const u = Math.min(1, at / length);
  const w = 1 - u;
  return (
    w * w * (from * (1 + 2 * u) + length * slopeFrom * u) +
    u * u * (to * (3 - 2 * u) - length * slopeTo * w)
  );
}

/** How far into a rising stretch a value is met. */
function meet(stretch: Stretch, wanted: number): number {
  let [low, high] = [0, stretch.length];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (valueAt(stretch, middle) < wanted) low = middle;
    else high = middle;
  }
  return high;
}
