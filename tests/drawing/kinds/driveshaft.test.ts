import { beforeAll, describe, expect, test } from 'vitest';
import { DRIVESHAFT } from '../../../src/drawing/kinds/driveshaft.ts';
import { createData, type Slots } from '../../support/drawing-data.ts';
import { findCut, findOverlaps, loadPlate, show } from '../../support/drawn.ts';

beforeAll(loadPlate);

const INCH = 0.0254;
const inches = (value: number) => `${(value / INCH).toFixed(3)} in`;
const UNITS = Object.fromEntries(DRIVESHAFT.slots.map(({ name }) => [name, inches]));

const QUARRY: Slots = {
  length: 45.985 * INCH,
  tube_diameter: 3 * INCH,
  tube_length: 42.185 * INCH,
  front_weld: 1.9 * INCH,
  seal_to_joint: 3.325 * INCH,
  engaged: 2.675 * INCH,
  set_back: 0.875 * INCH,
};

const CASES: readonly (readonly [name: string, slots: Slots])[] = [
  ['the estate', QUARRY],
  ['a slip yoke past its stop', { ...QUARRY, set_back: -0.3 * INCH }],
  ['a yoke out of its tail', { ...QUARRY, engaged: -2 * INCH }],
  ['only the two that are asked for', { length: 1.2, tube_diameter: 0.08 }],
  ['a diameter not known', { length: 1.2 }],
  ['nothing known', {}],
  ['no number', { ...QUARRY, length: Number.NaN, set_back: Number.POSITIVE_INFINITY }],
  ['a length of nought', { ...QUARRY, length: 0 }],
  ['a tube as thick as long', { ...QUARRY, tube_diameter: 46 * INCH }],
  ['a mile of shaft', { ...QUARRY, length: 1609 }],
  ['a set-back longer than the shaft', { ...QUARRY, set_back: 3 }],
];

const draw = (slots: Slots, width: number) =>
  DRIVESHAFT.draw(createData('Shaft', slots, UNITS), { document, width, idPrefix: 'd' });

test.each(
  CASES.flatMap(([name, slots]) => [300, 390, 700, 1000].map((w) => [name, w, slots] as const)),
)('%s at %i px: nothing is cut and nothing overlaps', (_, width, slots) => {
  const svg = show(draw(slots, width));
  expect(findCut(svg)).toEqual([]);
  expect(findOverlaps(svg)).toEqual([]);
  expect(svg.outerHTML).not.toContain('NaN');
});

function spanOf(svg: SVGElement, part: string): number {
  const element = svg.querySelector(`[data-part="${part}"]`)!;
  return Number(element.getAttribute('data-to')) - Number(element.getAttribute('data-from'));
}

describe('to scale', () => {
  test.each([300, 390, 1000])('at %i px all dimensions share one scale', (width) => {
    const svg = draw(QUARRY, width);
    const scale = spanOf(svg, 'length') / 45.985;
    expect(spanOf(svg, 'tube_length')).toBeCloseTo(42.185 * scale, 1);
    expect(spanOf(svg, 'seal_to_joint')).toBeCloseTo(3.325 * scale, 1);
    expect(spanOf(svg, 'engaged')).toBeCloseTo(2.675 * scale, 1);
    expect(spanOf(svg, 'set_back')).toBeCloseTo(0.875 * scale, 1);
  });

  test('the tube is as high as it is thick, by the scale of its length', () => {
    const svg = draw(QUARRY, 800);
    const tube = svg.querySelector('[data-part="tube"]')!;
    const [wide, high] = ['width', 'height'].map((name) => Number(tube.getAttribute(name)));
    expect(high! / wide!).toBeCloseTo(3 / 42.185, 3);
  });

  test('the joints stand on the ends of the length', () => {
    const svg = draw(QUARRY, 800);
    const centres = [...svg.querySelectorAll('[data-part="joint"]')].map((joint) =>
      Number(joint.getAttribute('cx')),
    );
    expect(centres[1]! - centres[0]!).toBeCloseTo(spanOf(svg, 'length'), 1);
  });

  test('a shorter set-back brings the stop nearer to the yoke', () => {
    const near = spanOf(draw({ ...QUARRY, set_back: 0.25 * INCH }, 800), 'set_back');
    expect(near).toBeLessThan(spanOf(draw(QUARRY, 800), 'set_back'));
  });
});

test('a slip yoke past its stop is told in words and in the colour of danger', () => {
  const svg = draw(CASES[1]![1], 700);
  expect(svg.textContent).toContain('0.300\u00a0in past its stop');
  expect(svg.innerHTML).toContain('--warn');
});

test('what is only assumed is said, and no dimension claims it', () => {
  const svg = draw({ length: 1.2 }, 700);
  expect(svg.textContent).toContain('Not to scale');
  expect(svg.querySelector('[data-part="tube_length"]')).toBeNull();
  expect(draw(QUARRY, 700).textContent).not.toContain('Not to scale');
});

test('the description has the readings in words', () => {
  const words = DRIVESHAFT.describe(createData('Shaft', QUARRY, UNITS));
  expect(words).toContain('45.985 in from joint centre to joint centre');
  expect(words).toContain('0.875 in before the slip yoke’s stop');
});

test('it is an image with a name and a description of its own', () => {
  const svg = draw(QUARRY, 500);
  expect(svg.getAttribute('role')).toBe('img');
  expect(svg.querySelector('title')!.id).toBe('d-title');
  expect(svg.querySelector('desc')!.textContent).toContain('Side view');
});
