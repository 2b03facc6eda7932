import { parseHTML } from 'linkedom';
import { beforeAll, expect, test } from 'vitest';
import { drawGauge } from '../../src/drawing/gauge.ts';
import { GAUGES } from '../support/drawing-cases.ts';
import { findCut, findOverlaps, listTexts, loadPlate, numbersOf, show } from '../support/drawn.ts';

beforeAll(loadPlate);

const WIDTHS = [240, 300, 390, 700, 1000];
const BEARING = GAUGES[0]![1];

test.each(GAUGES.flatMap(([name, data]) => WIDTHS.map((width) => [name, width, data] as const)))(
  '%s at %i px: nothing is cut and nothing overlaps',
  (_, width, data) => {
    const svg = show(drawGauge(data, { document, width, idPrefix: 'g' }));
    expect(findCut(svg)).toEqual([]);
    expect(findOverlaps(svg)).toEqual([]);
  },
);

test('the pointer stands on its value to scale', () => {
  const svg = drawGauge(BEARING, { document, width: 702, idPrefix: 'g' });
  const [tip] = numbersOf(svg, '[data-value="0.165"]');
  // The window of 0.075 in takes 1/2.4 of the bar's 700 px and starts 0.7/2.4 into it.
  expect(tip).toBeCloseTo(1 + (700 * (0.7 + 0.04 / 0.075)) / 2.4, 1);
});

test('a value beyond the scale is an arrow at the edge', () => {
  const far = GAUGES.find(([name]) => name === 'a value far above')![1];
  const svg = show(drawGauge(far, { document, width: 702, idPrefix: 'g' }));
  expect(numbersOf(svg, '[data-value="0.9"]')[0]).toBe(701);
  expect(listTexts(svg).map(({ text }) => text)).toContain('0.900 in, off the scale');
});

test('a value outside the window is not told by colour alone', () => {
  const low = GAUGES.find(([name]) => name === 'a value below')![1];
  const svg = drawGauge(low, { document, width: 700, idPrefix: 'g' });
  expect(svg.querySelector('[data-value]')?.getAttribute('fill')).toContain('--warn');
  expect(svg.querySelector('desc')?.textContent).toContain('below the window');
});

test('a value that is not known has no pointer', () => {
  const none = GAUGES.find(([name]) => name === 'a value not known')![1];
  const svg = drawGauge(none, { document, width: 700, idPrefix: 'g' });
  expect(svg.querySelector('[data-value]')).toBeNull();
  expect(svg.textContent).toContain('no value yet');
});

test('a terminal draws the same gauge', () => {
  const { document: other } = parseHTML('<!doctype html><html><body></body></html>');
  const draw = (doc: Document) => drawGauge(BEARING, { document: doc, width: 500, idPrefix: 'g' });
  expect(listShapes(draw(other as unknown as Document))).toEqual(listShapes(draw(document)));
});

function listShapes(svg: SVGElement): readonly string[] {
  return [...svg.querySelectorAll('*')].map(
    (element) =>
      `${element.tagName.toLowerCase()} ${['d', 'x', 'y', 'fill'].map((name) => element.getAttribute(name))}`,
  );
}
