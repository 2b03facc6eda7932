import type { FunctionDeclaration } from '../language/functions/declaration.ts';
import {
  DISTANCE_AFTER,
  SPEED_AFTER,
  SPEED_OVER_DISTANCE,
  TIME_OVER_DISTANCE,
  TIME_TO_SPEED,
} from './acceleration.ts';
import { BEST_SHIFT_SPEEDS } from './best-shift.ts';
import { LOADED_BOLT_TENSION, NUT_FACTOR } from './bolt-tension.ts';
import { CLUTCH_INNER_DIAMETERS } from './clutch-inner-diameter.ts';
import { SLIP_END_SPEED, SLIP_ENERGY, SLIP_TIME } from './clutch-slip.ts';
import { CLUTCH_TORQUE_BY_PRESSURE, CLUTCH_TORQUE_BY_WEAR } from './clutch-torque.ts';
import { TUBE_CRITICAL_SPEED } from './critical-speed.ts';
import { DIAL_RUNOUT } from './dial-runout.ts';
import { ANSI_LIMITS, ISO_LIMITS } from './fit-limits.ts';
import { BEND_TWIST, JOINT_ANGLE } from './joint-angle.ts';
import { EQUIVALENT_ANGLE, PAIR_SPEED_RATIO, PAIR_SWING } from './joint-pair.ts';
import { CLAMP_FOR_PRESSURE, LINING_PRESSURE } from './lining-pressure.ts';
import { LOADED_SHAFT_SPEED } from './loaded-shaft.ts';
import { NEAREST_DOWEL } from './offset-dowel.ts';
import { BORE_CLOSING, PRESS_FIT_PRESSURE } from './press-fit.ts';
import { PULL_AT_SPEED, SPARE_PULL } from './pull.ts';
import { QUARTER_MILE_RULE } from './quarter-mile.ts';
import { ROAD_LOAD, SPEED_ON_POWER } from './road-load.ts';
import { SHAFT_DEFLECTION } from './shaft-deflection.ts';
import { NEAREST_STACK } from './shim-stack.ts';
import { TOP_SPEEDS } from './top-speed.ts';
import { TUBE_SECOND_MOMENT, TUBE_SHEAR_STRESS, TUBE_TORQUE, TUBE_TWIST } from './tube-torsion.ts';
import { JOINT_ACCELERATION, JOINT_LAG, JOINT_SPEED_RATIO } from './universal-joint.ts';
import { LIKELY_SOURCES } from './vibration-order.ts';
import { HEAVIEST_SHARE, RELIEVED, WEAKEST_LINK } from './weakest-link.ts';

/** All functions of the trade, for the language, the help and the tests. */
export const TRADE: readonly FunctionDeclaration[] = [
  NEAREST_STACK,
  ...DIAL_RUNOUT,
  NEAREST_DOWEL,
  JOINT_ANGLE,
  BEND_TWIST,
  JOINT_SPEED_RATIO,
  JOINT_LAG,
  JOINT_ACCELERATION,
  EQUIVALENT_ANGLE,
  PAIR_SWING,
  PAIR_SPEED_RATIO,
  CLUTCH_TORQUE_BY_WEAR,
  CLUTCH_TORQUE_BY_PRESSURE,
  LINING_PRESSURE,
  CLAMP_FOR_PRESSURE,
  CLUTCH_INNER_DIAMETERS,
  SLIP_END_SPEED,
  SLIP_TIME,
  SLIP_ENERGY,
  TUBE_SECOND_MOMENT,
  TUBE_SHEAR_STRESS,
  TUBE_TORQUE,
  TUBE_TWIST,
  WEAKEST_LINK,
  HEAVIEST_SHARE,
  RELIEVED,
  PRESS_FIT_PRESSURE,
  BORE_CLOSING,
  ISO_LIMITS,
  ANSI_LIMITS,
  NUT_FACTOR,
  LOADED_BOLT_TENSION,
  PULL_AT_SPEED,
  SPARE_PULL,
  ROAD_LOAD,
  SPEED_ON_POWER,
  TOP_SPEEDS,
  BEST_SHIFT_SPEEDS,
  TIME_TO_SPEED,
  TIME_OVER_DISTANCE,
  SPEED_OVER_DISTANCE,
  SPEED_AFTER,
  DISTANCE_AFTER,
  QUARTER_MILE_RULE,
  TUBE_CRITICAL_SPEED,
  SHAFT_DEFLECTION,
  LOADED_SHAFT_SPEED,
  LIKELY_SOURCES,
];
