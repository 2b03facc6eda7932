import type { FunctionDeclaration } from '../language/functions/declaration.ts';
import type { QuantityList, Value } from '../language/kind.ts';
import { TURNING_SPEED } from './dimensions.ts';
import { CURVE, createDrive, LIMIT, outsideDrive, refuseDrive, TURNS } from './drive-parameters.ts';
import { createPullLine, lastSpeed, type PullLine, pullAt } from './pull-line.ts';

/** When to change up. */
export const BEST_SHIFT_SPEEDS: FunctionDeclaration = {
  name: 'best_shift_speeds',
  doc: 'The engine speed at which to leave each gear: where the next one pulls as hard, else the limit; in the last gear the limit.',
  parameters: [...CURVE, TURNS, LIMIT],
  result: { shape: 'list', dimension: TURNING_SPEED },
  work: {
    type: 'whole',
    run: (...values) => {
      const drive = driveOf(values);
      const turns = values[2] as QuantityList;
      const lines = Array.from(turns, (each) => createPullLine(drive, each));
      return turns.map((each, i) => each * bestRoadSpeed(lines[i]!, lines[i + 1]));
    },
    refuse: (...values) => refuseDrive(driveOf(values), values[2] as QuantityList),
  },
  example: [
    'best_shift_speeds([1000 rpm, 3000 rpm, 5000 rpm], [100 N·m, 100 N·m, 0 N·m], [2 rad/m, 1 rad/m], 5000 rpm)',
    '[4000 rpm, 5000 rpm]',
  ],
  source: 'derived: the pull of two gears set equal',
  validity:
    'for the shortest time alone; leaves out what the shift itself takes, rotating mass, noise and the life of the engine',
  outside: (...values) => outsideDrive(driveOf(values)),
};

function driveOf(values: readonly Value[]) {
  return createDrive(values.slice(0, 2), values[3]!, [0, 1, 0]);
}

/** From the limit down to the fastest speed at which this gear still pulls harder than the next. */
function bestRoadSpeed(line: PullLine, next: PullLine | undefined): number {
  const end = lastSpeed(line);
  if (next === undefined) return end;
  const gain = (speed: number) => pullAt(line, speed) - pullAt(next, speed);
  if (gain(end) >= 0) return end;
  const corners = [...line.speeds, ...next.speeds].filter((speed) => speed < end);
  const below = corners.sort((a, b) => b - a).find((speed) => gain(speed) >= 0) ?? 0;
  return halve(gain, below, end);
}

function halve(gain: (speed: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (gain(middle) >= 0) low = middle;
    else high = middle;
  }
  return low;
}
