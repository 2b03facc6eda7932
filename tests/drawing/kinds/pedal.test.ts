import { beforeAll, describe, expect, test } from 'vitest';
import { PEDAL } from '../../../src/drawing/kinds/pedal.ts';
import { findCut, findOverlaps, loadPlate, numbersOf, show } from '../../support/drawn.ts';
import { createPedal, PEDALS, USUAL } from '../../support/pedal-cases.ts';

beforeAll(loadPlate);

const draw = (data = createPedal(USUAL), width = 700) =>
  show(PEDAL.draw(data, { document, width, idPrefix: 'p' }));

test.each(
  PEDALS.flatMap(([name, data]) =>
    [300, 390, 700, 1000].map((width) => [name, width, data] as const),
  ),
)('%s at %i px: nothing is cut, nothing overlaps, no number is missing', (_, width, data) => {
  const svg = draw(data, width);
  expect(findCut(svg)).toEqual([]);
  expect(findOverlaps(svg)).toEqual([]);
  expect(svg.outerHTML.replaceAll(/[^<>]*(?=<\/(?:text|desc)>)/g, '')).not.toMatch(
    /NaN|Infinity|undefined/,
  );
});

test.each([300, 390, 700, 1000])('at %i px every shape stays on the paper', (width) => {
  const svg = draw(undefined, width);
  const paper = svg.getBoundingClientRect();
  for (const shape of svg.querySelectorAll('path, rect, circle')) {
    const box = shape.getBoundingClientRect();
    expect(box.left).toBeGreaterThanOrEqual(paper.left - 1);
    expect(box.right).toBeLessThanOrEqual(paper.right + 1);
    expect(box.top).toBeGreaterThanOrEqual(paper.top - 1);
    expect(box.bottom).toBeLessThanOrEqual(paper.bottom + 1);
  }
});

describe('to scale', () => {
  const svg = draw();
  const length = (part: string) =>
    Number(svg.querySelector(`[data-part="${part}"]`)?.getAttribute('data-length'));
  const scale = length('pad') / USUAL.pad_radius;

  test.each([
    ['length', USUAL.stop_length],
    ['travel', USUAL.pad_travel],
    ['to-stop', USUAL.stop_radius],
    ['to-rod', USUAL.rod_radius],
    ['to-floor', USUAL.floor],
  ])('its %s is drawn as long as it is', (part, inches) => {
    expect(length(part)).toBeCloseTo(inches * scale, 0);
  });

  test('the stop reaches from the bulkhead to the front of the pressed arm', () => {
    const stop = svg.querySelector('[data-part="stop"]')!;
    const [x, y, wide, high] = ['x', 'y', 'width', 'height'].map((name) =>
      Number(stop.getAttribute(name)),
    );
    const [bulkhead] = numbersOf(svg, '[data-part="bulkhead"]');
    const arm = numbersOf(svg, '[data-part="pressed"]');
    const share = (y! + high! / 2 - arm[1]!) / (arm[3]! - arm[1]!);
    expect(x).toBeCloseTo(bulkhead!, 1);
    expect(share).toBeCloseTo(USUAL.stop_radius / USUAL.pad_radius, 2);
    expect(x! + wide!).toBeCloseTo(arm[0]! + share * (arm[2]! - arm[0]!), 1);
  });
});

test('a stop of less than nothing is not drawn, and its length is still said', () => {
  const svg = draw(createPedal({ ...USUAL, stop_length: -1.5 }));
  expect(svg.querySelector('[data-part="stop"]')).toBeNull();
  expect(svg.textContent).toContain('A length of the stop: -1.50 in');
});

test('without length or travel it says why nothing is drawn', () => {
  const svg = draw(createPedal({ rod_radius: 2 }));
  expect(svg.querySelector('[data-part="rest"]')).toBeNull();
  expect(svg.textContent).toContain('Not drawn');
  expect(PEDAL.describe(createPedal({}))).toContain('No size is known yet');
});

test('the pressed position is a thin broken line', () => {
  const svg = draw();
  expect(svg.querySelector('[data-part="pressed"]')?.hasAttribute('stroke-dasharray')).toBe(true);
  expect(svg.querySelector('[data-part="rest"]')?.hasAttribute('stroke-dasharray')).toBe(false);
});

test('it is an image with a title and says its sizes', () => {
  const svg = draw();
  expect(svg.getAttribute('role')).toBe('img');
  expect(svg.querySelector('desc')?.textContent).toContain('B pad travel on the stop: 6.26 in');
});
