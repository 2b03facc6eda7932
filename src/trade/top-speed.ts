import type { FunctionDeclaration } from '../language/functions/declaration.ts';
import type { QuantityList, Value } from '../language/kind.ts';
import { SPEED } from './dimensions.ts';
import {
  AIR,
  CURVE,
  createDrive,
  DOUBLES_AT,
  LIMIT,
  outsideDrive,
  ROLLING,
  refuseDrive,
  START,
  TURNS,
} from './drive-parameters.ts';
import { createPullLine } from './pull-line.ts';
import { topSpeedOf } from './spare-line.ts';

/** Where pull and road load meet, or the engine ends. */
export const TOP_SPEEDS: FunctionDeclaration = {
  name: 'top_speeds',
  doc: 'The highest speed that each gear can hold on a level road: where pull and road load meet, or where the engine is at its limit; 0 in a gear that can hold none.',
  parameters: [...CURVE, TURNS, LIMIT, ROLLING, AIR, ...START, DOUBLES_AT],
  result: { shape: 'list', dimension: SPEED },
  work: {
    type: 'whole',
    run: (...values) => {
      const drive = driveOf(values);
      const [rolling, air, , , , doublesAt] = values.slice(4) as number[];
      const load = { rolling: rolling!, air: air!, doublesAt: doublesAt! };
      return (values[2] as QuantityList).map((turns) =>
        topSpeedOf(createPullLine(drive, turns), load),
      );
    },
    refuse: (...values) => refuseDrive(driveOf(values), values[2] as QuantityList),
  },
  example: [
    'top_speeds([100 rad/s, 500 rad/s], [200 N·m, 200 N·m], [10 rad/m, 4 rad/m], 500 rad/s, rolling: 0 N, air: 0.5 kg/m)',
    '[50 m/s, 40 m/s]',
  ],
  source: 'derived: pull and road load set equal',
  validity:
    'level road, still air, engine as on its curve; drag area and rolling resistance move it by the cube root of their error in power, so 10 % of drag is 3 % of top speed',
  outside: (...values) => outsideDrive(driveOf(values)),
};

function driveOf(values: readonly Value[]) {
  return createDrive(values.slice(0, 2), values[3]!, values.slice(6, 9));
}
