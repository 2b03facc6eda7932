import type { FunctionDeclaration, Parameter } from '../language/functions/declaration.ts';
import { ENERGY, INERTIA, TIME, TORQUE, TURNING_SPEED } from './dimensions.ts';

const SOURCE = 'published: Khurmi & Gupta, Theory of Machines, example 10.27 p. 306, second-hand';
const VALIDITY =
  'the torque of the clutch stays the same while it slips, the driven side starts from rest, and nothing else drives or brakes: a driver who feeds in throttle adds to the time and to the heat';

const DRIVING: Parameter = {
  name: 'driving',
  shape: 'either',
  dimension: INERTIA,
  doc: 'inertia of the driving side',
};
const DRIVEN: Parameter = {
  name: 'driven',
  shape: 'either',
  dimension: INERTIA,
  doc: 'inertia of the driven side, as the clutch feels it',
};
const SPEED: Parameter = {
  name: 'speed',
  shape: 'either',
  dimension: TURNING_SPEED,
  doc: 'speed of the driving side when the clutch bites',
};
const TORQUE_OF_CLUTCH: Parameter = {
  name: 'torque',
  shape: 'either',
  dimension: TORQUE,
  doc: 'torque of the slipping clutch',
};

/** Speed at which both sides of a clutch meet. */
export const SLIP_END_SPEED: FunctionDeclaration = {
  name: 'slip_end_speed',
  doc: 'Speed at which both sides of a slipping clutch meet, when the driven side was at rest.',
  parameters: [DRIVING, DRIVEN, SPEED],
  result: { shape: 'lifted', dimension: TURNING_SPEED },
  work: {
    type: 'each',
    run: (driving, driven, speed) => (driving * speed) / (driving + driven),
    refuse: refuseInertia,
  },
  example: ['slip_end_speed(1 kg*m^2/rad^2, 3 kg*m^2/rad^2, 2000 rpm)', '500 rpm'],
  source: SOURCE,
  validity: VALIDITY,
};

/** How long a clutch slips. */
export const SLIP_TIME: FunctionDeclaration = {
  name: 'slip_time',
  doc: 'How long a clutch slips until both sides turn together.',
  parameters: [DRIVING, DRIVEN, SPEED, TORQUE_OF_CLUTCH],
  result: { shape: 'lifted', dimension: TIME },
  work: {
    type: 'each',
    run: (driving, driven, speed, torque) => (together(driving, driven) * speed) / torque,
    refuse: (driving, driven, _, torque) =>
      torque > 0 ? refuseInertia(driving, driven) : 'a clutch without torque slips for ever',
  },
  example: ['slip_time(1 kg*m^2/rad^2, 3 kg*m^2/rad^2, 100 rad/s, torque: 25 N·m)', '3 s'],
  source: SOURCE,
  validity: VALIDITY,
};

/** What turns into heat while a clutch slips. */
export const SLIP_ENERGY: FunctionDeclaration = {
  name: 'slip_energy',
  doc: 'Work that turns into heat in a slipping clutch; how hard it is clamped makes no difference.',
  parameters: [DRIVING, DRIVEN, SPEED],
  result: { shape: 'lifted', dimension: ENERGY },
  work: {
    type: 'each',
    run: (driving, driven, speed) => (together(driving, driven) * speed * speed) / 2,
    refuse: refuseInertia,
  },
  example: ['slip_energy(1 kg*m^2/rad^2, 3 kg*m^2/rad^2, 100 rad/s)', '3.75 kW * 1 s'],
  source: SOURCE,
  validity: VALIDITY,
};

/** The one inertia that slips as the two do against each other. */
function together(driving: number, driven: number): number {
  return (driving * driven) / (driving + driven);
}

function refuseInertia(driving: number, driven: number): string | undefined {
  return driving > 0 && driven > 0 ? undefined : 'what turns has an inertia above 0';
}
