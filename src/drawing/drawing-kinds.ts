import type { DrawingDeclaration } from './declaration.ts';
import { DIAL } from './kinds/dial.ts';

/** All kinds of drawing that a sheet can name. */
export const DRAWINGS: readonly DrawingDeclaration[] = [DIAL];

export function findDrawing(name: string): DrawingDeclaration | undefined {
  return DRAWINGS.find((drawing) => drawing.name === name);
}
