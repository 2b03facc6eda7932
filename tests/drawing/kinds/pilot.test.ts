import { beforeAll, describe, expect, test } from 'vitest';
import { PILOT } from '../../../src/drawing/kinds/pilot.ts';
import { createData, type Slots } from '../../support/drawing-data.ts';
import { findCut, findOverlaps, loadPlate, show } from '../../support/drawn.ts';

beforeAll(loadPlate);

const INCH = 0.0254;
const inches = (value: number) => `${(value / INCH).toFixed(3)} in`;
const UNITS = Object.fromEntries(PILOT.slots.map(({ name }) => [name, inches]));

const IN_INCHES = {
  reach: 0.75,
  nose: 0.7495,
  spigot: 0.85,
  bush_depth: 0.05,
  bush_length: 0.75,
  bush_outer: 1.001,
  bush_bore: 0.7516,
  bore_depth: 1.35,
  engaged: 0.7,
  end_clearance: 0.6,
  shoulder_clearance: 0.15,
  boss: 2.5,
  spline_from_tip: 1.3,
  spline_length: 2.2,
  spline_outer: 1.125,
  flywheel: 1.1,
  hub_near: 0.95,
  hub_length: 1,
  hub_outer: 1.75,
};
const QUARRY: Slots = Object.fromEntries(
  Object.entries(IN_INCHES).map(([name, value]) => [name, value * INCH]),
);
const change = (inch: Partial<Record<keyof typeof IN_INCHES, number>>): Slots => ({
  ...QUARRY,
  ...Object.fromEntries(Object.entries(inch).map(([name, value]) => [name, value * INCH])),
});

const CASES: readonly (readonly [name: string, slots: Slots])[] = [
  ['the estate', QUARRY],
  ['a shaft that bottoms', change({ reach: 1.4, end_clearance: -0.05, shoulder_clearance: -0.5 })],
  ['a shaft that never reaches', change({ reach: -0.3, engaged: -0.35, end_clearance: 1.65 })],
  ['a bush that stands out', change({ bush_depth: -0.2, shoulder_clearance: -0.1 })],
  ['a bush without a wall', change({ bush_bore: 1.001 })],
  ['a hole without depth', change({ bore_depth: 0, end_clearance: -0.75 })],
  ['a hub as long as a mile', change({ hub_length: 63_360 })],
  ['a spigot of nought', change({ nose: 0, spigot: 0 })],
  ['a needle', change({ bush_outer: 0.01, bush_bore: 0.006, nose: 0.005, boss: 0.02 })],
  ['a reach not known', { ...QUARRY, reach: undefined, engaged: undefined }],
  ['only what must be there', Object.fromEntries(Object.entries(QUARRY).slice(0, 11))],
  ['nothing known', {}],
];

const draw = (slots: Slots, width: number) =>
  PILOT.draw(createData('Pilot', slots, UNITS), { document, width, idPrefix: 'p' });

test('a page narrower than the margins has no part of less than nothing', () => {
  const sizes = [...draw(QUARRY, 3).querySelectorAll('rect')].flatMap((rect) => [
    Number(rect.getAttribute('width')),
    Number(rect.getAttribute('height')),
  ]);
  expect(Math.min(...sizes)).toBeGreaterThanOrEqual(0);
});

test.each(
  CASES.flatMap(([name, slots]) => [300, 390, 700, 1000].map((w) => [name, w, slots] as const)),
)('%s at %i px: nothing is cut and nothing overlaps', (_, width, slots) => {
  const svg = show(draw(slots, width));
  expect(findCut(svg)).toEqual([]);
  expect(findOverlaps(svg)).toEqual([]);
  expect(svg.outerHTML).not.toMatch(/NaN|Infinity/);
});

describe('to scale', () => {
  test.each([300, 700])('at %i px lengths and diameters share one scale', (width) => {
    const svg = draw(QUARRY, width);
    const size = (part: string, name: string) =>
      Number(svg.querySelector(`[data-part="${part}"]`)!.getAttribute(name));
    const scale = size('hub', 'width');
    expect(size('bush', 'width')).toBeCloseTo(0.75 * scale, 1);
    expect(size('spigot', 'width')).toBeCloseTo(0.85 * scale, 1);
    expect(size('spigot', 'height')).toBeCloseTo(0.7495 * scale, 1);
    expect(size('splines', 'height')).toBeCloseTo(1.125 * scale, 1);
    expect(size('hub', 'height')).toBeCloseTo(((1.75 - 1.125) / 2) * scale, 1);
  });

  test('each dimension is as long as what it names', () => {
    const svg = draw(QUARRY, 900);
    const span = (part: string) => {
      const element = svg.querySelector(`[data-part="${part}"][data-from]`)!;
      return Math.abs(
        Number(element.getAttribute('data-to')) - Number(element.getAttribute('data-from')),
      );
    };
    const scale = span('reach') / 0.75;
    expect(span('engaged')).toBeCloseTo(0.7 * scale, 1);
    expect(span('end_clearance')).toBeCloseTo(0.6 * scale, 1);
    expect(span('shoulder_clearance')).toBeCloseTo(0.15 * scale, 1);
  });

  test('wide paper does not make it taller than it need be', () => {
    const fat = draw(change({ boss: 20 }), 1000);
    expect(Number(fat.getAttribute('height'))).toBeLessThan(600);
  });
});

test('a shaft that bottoms is dimensioned in the colour of danger', () => {
  const svg = draw(CASES[1]![1], 700);
  const dimension = svg.querySelector('[data-part="end_clearance"][data-from]')!;
  expect(dimension.getAttribute('stroke')).toContain('--warn');
});

test('what is left out is said', () => {
  const { reach: _, ...rest } = QUARRY;
  expect(draw(rest, 700).textContent).toContain('Not drawn');
  expect(draw(rest, 700).textContent).toContain('spigot');
  expect(draw(QUARRY, 700).textContent).not.toContain('Not drawn');
});

test('the description has the readings in words', () => {
  const words = PILOT.describe(createData('Pilot', QUARRY, UNITS));
  expect(words).toContain('0.750 in past the crank flange');
  expect(words).toContain('0.700 in of it is in the bush');
  expect(words).toContain('0.600 in, between bush and shoulder 0.150 in');
  expect(words).toContain('begins 0.950 in behind the flange');
});
