import type { Dimension } from '../units/dimension.ts';

// Dimensions that the declarations of several topics share, by what they measure.
export const LENGTH: Dimension = [1, 0, 0, 0];
/** Of a section, against bending or twisting. */
export const SECOND_MOMENT: Dimension = [4, 0, 0, 0];
export const MASS: Dimension = [0, 1, 0, 0];
export const DENSITY: Dimension = [-3, 1, 0, 0];
export const TIME: Dimension = [0, 0, 1, 0];
export const ANGLE: Dimension = [0, 0, 0, 1];
export const SPEED: Dimension = [1, 0, -1, 0];
export const TURNING_SPEED: Dimension = [0, 0, -1, 1];
export const FORCE: Dimension = [1, 1, -2, 0];
export const TORQUE: Dimension = [2, 1, -2, -1];
export const ENERGY: Dimension = [2, 1, -2, 0];
export const POWER: Dimension = [2, 1, -3, 0];
export const PRESSURE: Dimension = [-1, 1, -2, 0];
/** Of what turns: torque over turning acceleration. */
export const INERTIA: Dimension = [2, 1, 0, -2];
/** Turns of the engine for the road covered. */
export const TURN_PER_LENGTH: Dimension = [-1, 0, 0, 1];
/** What the air's drag is for each square of the speed: ½ ρ Cd A. */
export const MASS_PER_LENGTH: Dimension = [-1, 1, 0, 0];
