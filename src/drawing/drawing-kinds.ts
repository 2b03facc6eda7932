import type { DrawingDeclaration } from './declaration.ts';

/** All kinds of drawing that a sheet can name. */
export const DRAWINGS: readonly DrawingDeclaration[] = [];

export function findDrawing(name: string): DrawingDeclaration | undefined {
  return DRAWINGS.find((drawing) => drawing.name === name);
}
