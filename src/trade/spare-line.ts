import { lastSpeed, type PullLine, pullAt } from './pull-line.ts';
import { loadAt, type RoadLoad } from './road-load.ts';

/** The place on a pull line where most is left over the road load. */
export interface Best {
  readonly speed: number;
  readonly spare: number;
}

/** Most that a gear has left over the road load from a speed upward, capped by grip. */
export function bestOf(
  line: PullLine,
  load: RoadLoad,
  grip = Number.POSITIVE_INFINITY,
  from = 0,
): Best {
  const corners = cornersOf(line, grip).filter((speed) => speed >= from);
  return corners
    .slice(1)
    .map((to, i) => bestBetween(line, load, grip, corners[i]!, to))
    .reduce(better, at(line, load, grip, from));
}

/** The highest speed that a gear can hold on the level; 0 where it can hold none. */
export function topSpeedOf(line: PullLine, load: RoadLoad): number {
  const end = lastSpeed(line);
  const corners = cornersOf(line, Number.POSITIVE_INFINITY);
  if (spareAt(line, load, end) >= 0) return end;
  for (let i = corners.length - 1; i > 0; i -= 1) {
    const best = bestBetween(line, load, Number.POSITIVE_INFINITY, corners[i - 1]!, corners[i]!);
    if (best.spare >= 0) return crossing(line, load, best.speed, corners[i]!);
  }
  return 0;
}

function spareAt(line: PullLine, load: RoadLoad, speed: number): number {
  return pullAt(line, speed) - loadAt(load, speed);
}

function at(line: PullLine, load: RoadLoad, grip: number, speed: number): Best {
  return { speed, spare: Math.min(pullAt(line, speed), grip) - loadAt(load, speed) };
}

/** Corners of the line, and the places where it meets the grip. */
function cornersOf({ speeds, pulls }: PullLine, grip: number): readonly number[] {
  return speeds.flatMap((speed, i) => {
    const [before, after] = [pulls[i - 1], pulls[i]!];
    if (before === undefined || (before - grip) * (after - grip) >= 0) return [speed];
    const share = (grip - before) / (after - before);
    return [speeds[i - 1]! + share * (speed - speeds[i - 1]!), speed];
  });
}

/** Between two corners the pull is straight and the load a parabola: one bend, at its vertex or at an end. */
function bestBetween(line: PullLine, load: RoadLoad, grip: number, from: number, to: number): Best {
  const spare = (speed: number) => at(line, load, grip, speed);
  const rise = Math.min(pullAt(line, to), grip) - Math.min(pullAt(line, from), grip);
  const slope = rise / (to - from) - load.rolling / load.doublesAt;
  const vertex = Math.min(to, Math.max(from, slope / (2 * load.air)));
  return [from, Number.isFinite(vertex) ? vertex : to, to].map(spare).reduce(better);
}

function better(best: Best, each: Best): Best {
  return each.spare > best.spare ? each : best;
}

/** Halves the gap between a speed that can be held and one that cannot. */
function crossing(line: PullLine, load: RoadLoad, held: number, lost: number): number {
  let [low, high] = [held, lost];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (spareAt(line, load, middle) >= 0) low = middle;
    else high = middle;
  }
  return low;
}
