import type { FunctionDeclaration } from '../language/functions/declaration.ts';
import { FORCE, POWER, SPEED } from './dimensions.ts';
import { AIR, DOUBLES_AT, ROLLING } from './drive-parameters.ts';

/** What holds the car back on a level road in still air; SI. */
export interface RoadLoad {
  readonly rolling: number;
  readonly air: number;
  readonly doublesAt: number;
}

/** Rolling resistance, growing in a straight line with speed, and the drag of the air with its square. */
export function loadAt({ rolling, air, doublesAt }: RoadLoad, speed: number): number {
  return rolling * (1 + speed / doublesAt) + air * speed * speed;
}

const SOURCE =
  'rolling 0.01 (1 + V/147 ft/s) from memory: Mannering, Principles of Highway Engineering and Traffic Analysis; air ½ ρ Cd A V²: any text on fluids';
const VALIDITY =
  'hard level road, still air; ± 10 to 20 % without a coast-down test of the car itself';
/** 150 mph: the rise of rolling resistance is a figure for highways. */
const FASTEST = 150 * 0.44704;

export const ROAD_LOAD: FunctionDeclaration = {
  name: 'road_load',
  doc: 'The force that holds a car back on a level road in still air: rolling resistance, which grows with speed, and the drag of the air, which grows with its square.',
  parameters: [
    { name: 'speed', shape: 'either', dimension: SPEED, doc: 'road speed' },
    ROLLING,
    AIR,
    DOUBLES_AT,
  ],
  result: { shape: 'lifted', dimension: FORCE },
  work: {
    type: 'each',
    run: (speed, rolling, air, doublesAt) =>
      loadAt({ rolling: rolling!, air: air!, doublesAt: doublesAt! }, speed!),
    refuse: (_speed, _rolling, _air, doublesAt) =>
      doublesAt! > 0 ? undefined : 'rolling resistance doubles at a speed above 0',
  },
  example: ['road_load(20 m/s, 100 N, air: 0.5 kg/m, doubles_at: 40 m/s)', '350 N'],
  source: SOURCE,
  validity: VALIDITY,
  outside: (speed) =>
    (typeof speed === 'number' ? [speed] : Array.from(speed as Float64Array)).some(
      (each) => each > FASTEST,
    )
      ? 'above 150 mph rolling resistance grows faster than this'
      : undefined,
};

export const SPEED_ON_POWER: FunctionDeclaration = {
  name: 'speed_on_power',
  doc: 'The road speed at which rolling resistance and air use up a power: the most that any gearing could reach on the level.',
  parameters: [
    { name: 'power', shape: 'quantity', dimension: POWER, doc: 'power at the wheels' },
    ROLLING,
    AIR,
    DOUBLES_AT,
  ],
  result: { shape: 'quantity', dimension: SPEED },
  work: {
    type: 'whole',
    run: (power, rolling, air, doublesAt) =>
      speedOnPower(power as number, {
        rolling: rolling as number,
        air: air as number,
        doublesAt: doublesAt as number,
      }),
    refuse: (power, rolling, air, doublesAt) => {
      if (!((power as number) >= 0)) return 'a power below 0 drives no car';
      if (!((rolling as number) >= 0 && (air as number) >= 0 && (doublesAt as number) > 0))
        return 'rolling resistance and drag must not be below 0';
      return (rolling as number) + (air as number) > 0
        ? undefined
        : 'without rolling resistance and drag there is no highest speed';
    },
  },
  example: ['speed_on_power(32 kW, rolling: 0 N, air: 0.5 kg/m)', '40 m/s'],
  source: SOURCE,
  validity: VALIDITY,
  outside: (...values) =>
    speedOnPower(values[0] as number, {
      rolling: values[1] as number,
      air: values[2] as number,
      doublesAt: values[3] as number,
    }) > FASTEST
      ? 'above 150 mph rolling resistance grows faster than this'
      : undefined,
};

/** Halves the gap until the numbers are neighbours; power rises with speed throughout. */
function speedOnPower(power: number, load: RoadLoad): number {
  const uses = (speed: number) => loadAt(load, speed) * speed;
  let [low, high] = [0, 1];
  while (uses(high) < power) high *= 2;
  for (let i = 0; i < 100; i += 1) {
    const middle = (low + high) / 2;
    if (uses(middle) < power) low = middle;
    else high = middle;
  }
  return high;
}
