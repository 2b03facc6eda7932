import type { DrawingDeclaration } from './declaration.ts';
import { DIAL } from './kinds/dial.ts';
import { DRIVESHAFT } from './kinds/driveshaft.ts';
import { JOINT_LINE } from './kinds/joint-line.ts';
import { PEDAL } from './kinds/pedal.ts';
import { PILOT } from './kinds/pilot.ts';
import { TAIL_DROP } from './kinds/tail-drop.ts';
import { TUNNEL_OPENING } from './kinds/tunnel-opening.ts';

/** All kinds of drawing that a sheet can name. */
export const DRAWINGS: readonly DrawingDeclaration[] = [
  DIAL,
  JOINT_LINE,
  PEDAL,
  TAIL_DROP,
  PILOT,
  DRIVESHAFT,
  TUNNEL_OPENING,
];

export function findDrawing(name: string): DrawingDeclaration | undefined {
  return DRAWINGS.find((drawing) => drawing.name === name);
}
