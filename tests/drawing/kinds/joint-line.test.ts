import { beforeAll, describe, expect, test } from 'vitest';
import { JOINT_LINE } from '../../../src/drawing/kinds/joint-line.ts';
import { createData, type Slots } from '../../support/drawing-data.ts';
import { findCut, findOverlaps, loadPlate, numbersOf, show } from '../../support/drawn.ts';

beforeAll(loadPlate);

const DEG = Math.PI / 180;
const degrees = (value: number) => `${(value / DEG).toFixed(2)}°`;
const UNITS = {
  ...Object.fromEntries(JOINT_LINE.slots.map(({ name }) => [name, degrees])),
  shaft_length: (value: number) => `${(value / 0.0254).toFixed(2)} in`,
};

const QUARRY: Slots = {
  gearbox_slope: 3 * DEG,
  shaft_slope: 1.65 * DEG,
  pinion_slope: 3 * DEG,
  shaft_length: 46 * 0.0254,
  front_angle: 1.46 * DEG,
  rear_angle: 1.64 * DEG,
  before_gearbox_slope: 4.2 * DEG,
  before_shaft_slope: 0.43 * DEG,
};

const CASES: readonly (readonly [name: string, slots: Slots])[] = [
  ['the estate', QUARRY],
  ['a W', { ...QUARRY, gearbox_slope: -3 * DEG, shaft_slope: 0, pinion_slope: 3 * DEG }],
  ['dead level', { ...QUARRY, gearbox_slope: 0, shaft_slope: 0, pinion_slope: 0 }],
  ['steep', { ...QUARRY, gearbox_slope: 20 * DEG, shaft_slope: -12 * DEG }],
  ['a slope that cannot be', { ...QUARRY, pinion_slope: 120 * DEG }],
  [
    'no joints, nothing before',
    { ...QUARRY, front_angle: undefined, before_shaft_slope: undefined },
  ],
  ['a shaft not known', { ...QUARRY, shaft_slope: undefined, front_angle: undefined }],
  ['nothing known', {}],
];

const draw = (slots: Slots, width: number) =>
  JOINT_LINE.draw(createData('Line', slots, UNITS), { document, width, idPrefix: 'j' });

test.each(
  CASES.flatMap(([name, slots]) => [300, 390, 700, 1000].map((w) => [name, w, slots] as const)),
)('%s at %i px: nothing is cut and nothing overlaps', (_, width, slots) => {
  const svg = show(draw(slots, width));
  expect(findCut(svg)).toEqual([]);
  expect(findOverlaps(svg)).toEqual([]);
  expect(svg.outerHTML).not.toContain('NaN');
});

describe('to scale', () => {
  test.each([
    ['gearbox', 3],
    ['shaft', 1.65],
    ['pinion', 3],
  ])('the centre line of the %s falls by its slope, as many times as is said', (part, slope) => {
    const svg = draw(QUARRY, 900);
    const [x1, y1, x2, y2] = numbersOf(svg, `[data-part="${part}"]`);
    const stretch = Number(
      svg.querySelector(`[data-part="${part}"]`)!.getAttribute('data-stretch'),
    );
    expect((y2! - y1!) / (x2! - x1!) / stretch).toBeCloseTo(Math.tan(slope * DEG), 3);
    expect(svg.textContent).toContain(`drawn ${stretch} times too large`);
  });

  test('what slopes steeply is not stretched', () => {
    const svg = draw({ ...QUARRY, gearbox_slope: 30 * DEG }, 700);
    expect(svg.querySelector('[data-part="shaft"]')!.getAttribute('data-stretch')).toBe('1');
    expect(svg.textContent).not.toContain('too large');
  });

  test('the dimension runs from joint to joint', () => {
    const svg = draw(QUARRY, 700);
    const joints = [...svg.querySelectorAll('[data-part="joint"]')].map((joint) =>
      Number(joint.getAttribute('cx')),
    );
    const length = svg.querySelector('[data-part="length"]')!;
    expect(Number(length.getAttribute('data-from'))).toBeCloseTo(joints[0]!, 1);
    expect(Number(length.getAttribute('data-to'))).toBeCloseTo(joints[1]!, 1);
  });

  test('the line before ends in the same pinion joint', () => {
    const svg = draw(QUARRY, 700);
    const before = numbersOf(svg, '[data-part="before"]');
    const shaft = numbersOf(svg, '[data-part="shaft"]');
    expect(before.slice(-2)).toEqual(shaft.slice(-2));
  });
});

test('what is only assumed is said', () => {
  expect(draw(CASES[6]![1], 700).textContent).toContain('assumed: slope of the shaft');
});

test('the description tells all slopes and both joints', () => {
  const words = JOINT_LINE.describe(createData('Line', QUARRY, UNITS));
  expect(words).toContain('gearbox 3.00°, shaft 1.65°, pinion 3.00°');
  expect(words).toContain('front joint is bent by 1.46°');
});
