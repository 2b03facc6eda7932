import { expect, test } from 'vitest';
import { DRAWINGS, findDrawing } from '../../src/drawing/drawing-kinds.ts';
import { PLANS } from '../../src/drawing/drawing-plans.ts';

test('each plan can be drawn, and nothing is drawn that has no plan', () => {
  expect(DRAWINGS.map(({ name }) => name).sort()).toEqual(Object.keys(PLANS).sort());
});

test('a drawing is found by its name', () => {
  expect(findDrawing('pedal')?.name).toBe('pedal');
  expect(findDrawing('teapot')).toBeUndefined();
});
