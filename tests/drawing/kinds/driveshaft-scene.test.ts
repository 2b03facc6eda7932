import { expect, test } from 'vitest';
import { createDriveshaftScene } from '../../../src/drawing/kinds/driveshaft-scene.ts';
import { createData, type Slots } from '../../support/drawing-data.ts';

const SHAFT: Slots = {
  length: 1.2,
  tube_diameter: 0.08,
  tube_length: 1.1,
  front_weld: 0.05,
  seal_to_joint: 0.09,
  engaged: 0.07,
  set_back: 0.02,
};
const scene = (slots: Slots) => createDriveshaftScene(createData('Shaft', slots));

test('counts along the shaft from the front joint, forward negative', () => {
  const { seal, yokeEnd, stop, tube, assumed } = scene(SHAFT);
  expect(seal).toBeCloseTo(-0.09, 12);
  expect(yokeEnd).toBeCloseTo(-0.16, 12);
  expect(stop).toBeCloseTo(-0.18, 12);
  expect(tube[1]).toBeCloseTo(1.15, 12);
  expect(assumed).toEqual([]);
});

test('a slip yoke past its stop has the stop behind its end', () => {
  const { stop, yokeEnd } = scene({ ...SHAFT, set_back: -0.01 });
  expect(stop).toBeGreaterThan(yokeEnd);
});

test.each([undefined, Number.NaN, Number.POSITIVE_INFINITY, 0, -1, 1e300])(
  'a length of %d is taken as the usual number of diameters, and said so',
  (length) => {
    const { length: drawn, assumed } = scene({ ...SHAFT, length });
    expect(drawn).toBeCloseTo(16 * 0.08, 12);
    expect(assumed).toEqual(['length']);
  },
);

test('a diameter that is not known follows from the length', () => {
  expect(scene({ length: 1.6 }).diameter).toBeCloseTo(0.1, 12);
});

test('with nothing known everything is drawn as usual', () => {
  const { assumed, left, right } = scene({});
  expect(assumed).toHaveLength(Object.keys(SHAFT).length);
  expect(right - left).toBeGreaterThan(1);
});
