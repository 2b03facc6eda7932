import { beforeAll, describe, expect, test } from 'vitest';
import { DIAL } from '../../../src/drawing/kinds/dial.ts';
import { createDial, DIALS, SHIFT } from '../../support/dial-cases.ts';
import {
  findCut,
  findOverlaps,
  listTexts,
  loadPlate,
  numbersOf,
  show,
} from '../../support/drawn.ts';

beforeAll(loadPlate);

const EIGHT = DIALS[0]![1];
const draw = (data = EIGHT, width = 700) =>
  show(DIAL.draw(data, { document, width, idPrefix: 'd' }));

test.each(
  DIALS.flatMap(([name, data]) =>
    [300, 390, 700, 1000].map((width) => [name, width, data] as const),
  ),
)('%s at %i px: nothing is cut, nothing overlaps, no number is missing', (_, width, data) => {
  const svg = draw(data, width);
  expect(findCut(svg)).toEqual([]);
  expect(findOverlaps(svg)).toEqual([]);
  expect(svg.outerHTML).not.toMatch(/NaN|Infinity|undefined/);
});

describe('to scale', () => {
  const svg = draw();
  const circle = svg.querySelector('[data-part="true"]')!;
  const [cx, cy, radius] = ['cx', 'cy', 'r'].map((name) => Number(circle.getAttribute(name)));
  const readings = [...svg.querySelectorAll('[data-part="reading"]')].map((dot) => {
    const [dx, dy] = [Number(dot.getAttribute('cx')) - cx!, Number(dot.getAttribute('cy')) - cy!];
    return { away: Math.hypot(dx, dy), angle: Math.atan2(dx, -dy) };
  });
  const arrow = numbersOf(svg, '[data-part="offset"]');
  const length = Math.hypot(arrow[2]! - arrow[0]!, arrow[3]! - arrow[1]!);

  test('each reading stands at its clock position', () => {
    readings.forEach(({ angle }, i) => {
      expect(Math.cos(angle - (i * Math.PI) / 4)).toBeCloseTo(1, 4);
    });
  });

  test('readings and offset have one scale, a high reading nearer to the middle', () => {
    const scale = length / 10;
    readings.forEach(({ away }, i) => {
      const thou = 10 * Math.cos((i * 1.5 - 4) * (Math.PI / 6));
      expect(away).toBeCloseTo(radius! - thou * scale, 1);
    });
  });

  test('the arrow goes from the crank’s axis to the bore’s centre, opposite the high side', () => {
    expect(arrow.slice(0, 2)).toEqual([cx, cy]);
    const angle = Math.atan2(arrow[2]! - cx!, cy! - arrow[3]!);
    expect(Math.cos(angle - 10 * (Math.PI / 6))).toBeCloseTo(1, 4);
  });

  test('the wall passes through the readings of a bore that is off centre and true', () => {
    const wall = numbersOf(svg, '[data-part="wall"]');
    expect(Math.hypot(wall[0]! - cx!, wall[1]! - cy!)).toBeCloseTo(readings[0]!.away, 1);
  });

  test('the dowels bring the centre as far as they are offset', () => {
    const landing = svg.querySelector('[data-part="landing"]')!;
    const [x, y] = ['cx', 'cy'].map((name) => Number(landing.getAttribute(name)));
    expect(Math.hypot(x! - cx!, y! - cy!)).toBeCloseTo(length * 0.3, 1);
  });
});

test('labels give the clock and the reading', () => {
  const texts = listTexts(draw()).map(({ text }) => text);
  expect(texts).toContain('4:30');
  expect(texts).toContain('9.7 thou');
});

test('readings too many for labels are listed in the key', () => {
  const crowd = DIALS.find(([name]) => name === 'forty-eight readings')![1];
  const svg = draw(crowd, 390);
  expect(svg.querySelectorAll('[data-part="reading"]')).toHaveLength(48);
  expect(svg.textContent).toContain('Readings: 12:00');
});

test('plain dowels have no direction drawn', () => {
  const svg = draw(createDial([12, 3, 6, 9], [0, 1, 2, 1], { ...SHIFT, dowel: 0 }));
  expect(svg.querySelector('[data-part="dowel"]')).toBeNull();
  expect(svg.textContent).toContain('Plain dowels');
});

test('a missing offset leaves the readings drawn', () => {
  const svg = draw(createDial([12, 3, 6, 9], [0, 1, 2, 1]));
  expect(svg.querySelector('[data-part="offset"]')).toBeNull();
  expect(svg.querySelectorAll('[data-part="reading"]')).toHaveLength(4);
});

test('it is an image with a title and says all it shows', () => {
  const svg = draw();
  expect(svg.getAttribute('role')).toBe('img');
  expect(svg.querySelector('title')?.textContent).toBe('Round the bore');
  expect(DIAL.describe(EIGHT)).toContain(
    'The bore’s centre stands 10.0 thou from the crank’s axis, toward 10:00.',
  );
  expect(svg.querySelector('desc')?.textContent).toBe(DIAL.describe(EIGHT));
});
