import { expect, test } from 'vitest';
import { createTunnelFrame } from '../../../src/drawing/kinds/tunnel-opening-frame.ts';
import { createTunnelScene } from '../../../src/drawing/kinds/tunnel-opening-scene.ts';
import { createData } from '../../support/drawing-data.ts';

const SCENE = createTunnelScene(
  createData('Opening', {
    hole_front: -0.2,
    hole_rear: -0.1,
    hole_width: 0.07,
    tunnel_width: 0.14,
  }),
);

test.each([300, 700, 1000])('at %i px all that is drawn lies in the figure', (width) => {
  const frame = createTunnelFrame(SCENE, width, 100, 150);
  const { left, right, front, rear } = SCENE.extent;
  expect(frame.x(left)).toBeGreaterThan(0);
  expect(frame.x(right)).toBeLessThan(frame.width);
  expect(frame.width + 100).toBeLessThanOrEqual(width + 1e-9);
  expect(frame.y(front)).toBeGreaterThan(0);
  expect(frame.y(rear)).toBeLessThan(frame.height);
});

test('one scale serves both ways', () => {
  const frame = createTunnelFrame(SCENE, 500, 100, 150);
  expect(frame.x(0.1) - frame.x(0)).toBeCloseTo(frame.y(0.1) - frame.y(0), 9);
});

test('a low figure is made as high as its words need', () => {
  expect(createTunnelFrame(SCENE, 300, 100, 900).height).toBe(900);
});
