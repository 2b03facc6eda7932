import { beforeAll, describe, expect, test } from 'vitest';
import { TAIL_DROP, tiltFor, turnPoint } from '../../../src/drawing/kinds/tail-drop.ts';
import { createData, type Slots } from '../../support/drawing-data.ts';
import { findCut, findOverlaps, loadPlate, numbersOf, show } from '../../support/drawn.ts';

beforeAll(loadPlate);

const INCH = 0.0254;
const inches = (value: number) => `${(value / INCH).toFixed(2)} in`;
const UNITS = Object.fromEntries(TAIL_DROP.slots.map(({ name }) => [name, inches]));

const QUARRY: Slots = {
  mount_to_tail: 42 * INCH,
  tail_below: 0.7 * INCH,
  head_reach: 10.25 * INCH,
  head_height: 15 * INCH,
  bulkhead_gap: 1.6 * INCH,
  drop: 3 * INCH,
  drop_limit: 3.53 * INCH,
  gap_left: 0.55 * INCH,
};

const CASES: readonly (readonly [name: string, slots: Slots])[] = [
  ['the estate', QUARRY],
  ['a head that meets the bulkhead', { ...QUARRY, drop: 6 * INCH, gap_left: -0.5 * INCH }],
  ['no drop', { ...QUARRY, drop: 0, gap_left: 1.6 * INCH }],
  ['a drop that cannot be', { ...QUARRY, drop: 900 * INCH }],
  ['a tail above the mounts', { ...QUARRY, tail_below: -3 * INCH }],
  ['a head in front of the mounts', { ...QUARRY, head_reach: -2 * INCH }],
  ['a length of nought', { ...QUARRY, mount_to_tail: 0 }],
  ['a gap not known', { ...QUARRY, bulkhead_gap: undefined, gap_left: undefined }],
  ['nothing known', {}],
  ['no limit bound', { ...QUARRY, drop_limit: undefined }],
];

const draw = (slots: Slots, width: number) =>
  TAIL_DROP.draw(createData('Tail', slots, UNITS), { document, width, idPrefix: 't' });

test.each(
  CASES.flatMap(([name, slots]) => [300, 390, 700, 1000].map((w) => [name, w, slots] as const)),
)('%s at %i px: nothing is cut and nothing overlaps', (_, width, slots) => {
  const svg = show(draw(slots, width));
  expect(findCut(svg)).toEqual([]);
  expect(findOverlaps(svg)).toEqual([]);
  expect(svg.outerHTML).not.toContain('NaN');
});

describe('to scale', () => {
  test.each([300, 700])('at %i px lengths and heights share one scale', (width) => {
    const svg = draw(QUARRY, width);
    const [tail, reach, gap, height] = ['tail', 'reach', 'gap', 'height'].map((part) => {
      const element = svg.querySelector(`[data-part="${part}"]`)!;
      return Math.abs(
        Number(element.getAttribute('data-to')) - Number(element.getAttribute('data-from')),
      );
    });
    const scale = tail! / 42;
    expect(reach).toBeCloseTo(10.25 * scale, 1);
    expect(gap).toBeCloseTo(1.6 * scale, 1);
    expect(height).toBeCloseTo(15 * scale, 1);
  });

  test('the lowered engine is the standing one turned about its mounts', () => {
    const svg = draw(QUARRY, 900);
    const mount = svg.querySelector('[data-part="mount"]')!;
    const [x, y] = [Number(mount.getAttribute('data-x')), Number(mount.getAttribute('data-y'))];
    const spans = (part: string) => {
      const numbers = numbersOf(svg, `[data-part="${part}"]`);
      return Array.from({ length: numbers.length / 2 }, (_, i) =>
        Math.hypot(numbers[2 * i]! - x, numbers[2 * i + 1]! - y),
      );
    };
    const [standing, lowered] = [spans('standing'), spans('lowered')];
    standing.forEach((span, i) => {
      expect(lowered[i]).toBeCloseTo(span, 0);
    });
  });

  test('the tail comes down by the drop', () => {
    const tilt = tiltFor(42, 0.7, 3);
    expect(turnPoint([42, -0.7], tilt)[1]).toBeCloseTo(-3.7, 12);
  });
});

test('a head that meets the bulkhead is told in words and in the colour of danger', () => {
  const svg = draw(CASES[1]![1], 700);
  expect(svg.textContent).toContain('meets the bulkhead');
  expect(svg.innerHTML).toContain('--warn');
});

test('what is only assumed is said', () => {
  expect(draw({ ...QUARRY, bulkhead_gap: undefined }, 700).textContent).toContain('Not to scale');
  expect(draw(QUARRY, 700).textContent).not.toContain('Not to scale');
});

test('the description has the readings in words', () => {
  const words = TAIL_DROP.describe(createData('Tail', QUARRY, UNITS));
  expect(words).toContain('42.00 in behind them');
  expect(words).toContain('0.55 in left of 1.60 in');
});
