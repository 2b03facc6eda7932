import { expect, test } from 'vitest';
import { layOutPedal, onArm } from '../../../src/drawing/kinds/pedal-layout.ts';
import { createPedal, USUAL } from '../../support/pedal-cases.ts';

test('the pad goes as far in a straight line as its travel says', () => {
  const layout = layOutPedal(createPedal(USUAL), 0, 500)!;
  const [rest, pressed] = [
    onArm(layout, layout.pad, layout.half),
    onArm(layout, layout.pad, -layout.half),
  ];
  expect((rest[0] - pressed[0]) / layout.pad).toBeCloseTo(USUAL.pad_travel / USUAL.pad_radius, 9);
  expect(rest[1]).toBeCloseTo(pressed[1], 9);
});

test('all lengths have the scale of the pedal', () => {
  const layout = layOutPedal(createPedal(USUAL), 0, 500)!;
  expect(layout.rod! / layout.pad).toBeCloseTo(USUAL.rod_radius / USUAL.pad_radius, 9);
  expect(layout.stop! / layout.pad).toBeCloseTo(USUAL.stop_radius / USUAL.pad_radius, 9);
});

test('a narrow page gives a smaller pedal, a wide one no larger than fits', () => {
  const [narrow, wide, wider] = [300, 600, 2000].map(
    (width) => layOutPedal(createPedal(USUAL), 0, width)!,
  );
  expect(narrow!.scale).toBeLessThan(wide!.scale);
  expect(wider!.foot).toBeLessThanOrEqual(420);
});

test.each([
  ['no length', { ...USUAL, pad_radius: undefined }],
  ['no travel', { ...USUAL, pad_travel: undefined }],
  ['a length below nought', { ...USUAL, pad_radius: -3 }],
  ['a travel of nought', { ...USUAL, pad_travel: 0 }],
])('with %s there is no layout', (_, lengths) => {
  expect(layOutPedal(createPedal(lengths), 0, 500)).toBeUndefined();
});

test('a travel beyond the circle lays the pedal level', () => {
  expect(layOutPedal(createPedal({ ...USUAL, pad_travel: 40 }), 0, 500)!.half).toBeCloseTo(
    Math.PI / 2,
    9,
  );
});
