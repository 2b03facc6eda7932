import { expect, test } from 'vitest';
import { alongArm, drawLettered, level } from '../../../src/drawing/kinds/pedal-dimensions.ts';
import { layOutPedal } from '../../../src/drawing/kinds/pedal-layout.ts';
import { createPen } from '../../../src/drawing/svg.ts';
import { createPedal, USUAL } from '../../support/pedal-cases.ts';

const pen = createPen({ document });
const lengthOf = (parts: readonly SVGElement[]) => Number(parts[1]!.getAttribute('data-length'));

test('a level dimension keeps its points above or below its line', () => {
  const dimension = level('A', [10, 50], [90, 70], 100, 'x');
  expect(dimension.lineFrom).toEqual([10, 100]);
  expect(dimension.lineTo).toEqual([90, 100]);
  expect(lengthOf(drawLettered(pen, dimension))).toBe(80);
});

test('a dimension along the arm runs beside it and is as long', () => {
  const layout = layOutPedal(createPedal(USUAL), 0, 500)!;
  const { from, to, lineFrom, lineTo } = alongArm(layout, 'C', 200, 40, 'x');
  expect(Math.hypot(to[0] - from[0], to[1] - from[1])).toBeCloseTo(200, 9);
  expect(Math.hypot(lineTo[0] - lineFrom[0], lineTo[1] - lineFrom[1])).toBeCloseTo(200, 9);
  expect(Math.hypot(lineFrom[0] - from[0], lineFrom[1] - from[1])).toBeCloseTo(40, 9);
});

test('a short one has its arrows outside, and one of nought still has a letter', () => {
  const short = drawLettered(pen, level('A', [10, 0], [16, 0], 20, 'x'));
  expect(short[1]!.getAttribute('d')).toBe('M-8 20L34 20');
  const none = drawLettered(pen, level('A', [10, 0], [10, 0], 20, 'x'));
  expect(none.at(-1)!.textContent).toBe('A');
  expect(none.map((part) => part.outerHTML).join('')).not.toContain('NaN');
});
