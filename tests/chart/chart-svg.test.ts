import axe from 'axe-core';
import { parseHTML } from 'linkedom';
import { beforeAll, beforeEach, expect, test } from 'vitest';
import { chartSVG } from '../../src/chart/chart-svg.ts';
import type { ChartData } from '../../src/sheet/chart-data.ts';
import { CHARTS, chart } from '../support/chart-cases.ts';
import { findCut, findOverlaps, listTexts, loadPlate, numbersOf, show } from '../support/drawn.ts';

beforeAll(loadPlate);
beforeEach(() => document.body.replaceChildren());

const WIDTHS = [300, 320, 390, 700, 1000];
const GEARS = CHARTS[0]![1];

function draw(data: ChartData, width = 700, idPrefix = 'chart'): SVGSVGElement {
  return show(chartSVG(data, { document, width, idPrefix }));
}

test.each(CHARTS.flatMap(([name, data]) => WIDTHS.map((width) => [name, width, data] as const)))(
  '%s at %i px: nothing is cut and nothing overlaps',
  (_, width, data) => {
    const svg = draw(data, width);
    expect(svg.tagName).toBe('svg');
    expect(findCut(svg)).toEqual([]);
    expect(findOverlaps(svg)).toEqual([]);
  },
);

test.each(CHARTS)('%s: axe finds nothing', async (_, data) => {
  const found = await axe.run(draw(data));
  expect(found.violations).toEqual([]);
});

test('a chart is one image with a name, its sentence, and nothing else said inside', () => {
  const svg = draw(GEARS);
  expect(svg.getAttribute('role')).toBe('img');
  expect(document.getElementById('chart-title')?.textContent).toBe(GEARS.title);
  expect(document.getElementById('chart-desc')?.textContent).toMatch(
    /^Engine speed over road speed/,
  );
  expect(
    svg.querySelectorAll('[aria-label], [aria-description], [aria-hidden], style'),
  ).toHaveLength(0);
});

test('a line that is cut off above is told of', () => {
  expect(draw(GEARS).querySelector('desc')?.textContent).toContain('the table goes on');
});

const LINES = 'g[stroke-width="2"]';

test('lines are drawn to scale', () => {
  const svg = draw(chart({}));
  const path = numbersOf(svg, `${LINES} path`);
  const numbers = listTexts(svg).map(({ text, left, right, top, bottom }) => ({
    text,
    x: (left + right) / 2,
    y: (top + bottom) / 2,
  }));
  const across = numbers.findLast(({ text }) => text === '10')!;
  const up = numbers.find(({ text }) => text === '10')!;
  const [x, y] = path.slice(-2);
  expect(Math.abs(x! - across.x)).toBeLessThan(1);
  expect(Math.abs(y! - up.y)).toBeLessThan(2);
});

test('each line has a dash of its own and its name at its end', () => {
  const svg = draw(GEARS);
  const dashes = [...svg.querySelectorAll(LINES)].map((line) =>
    line.getAttribute('stroke-dasharray'),
  );
  expect(dashes).toHaveLength(6);
  expect(new Set(dashes).size).toBe(6);
  const texts = listTexts(svg).map(({ text }) => text);
  expect(texts).toEqual(expect.arrayContaining(['1st', '2nd', '3rd', '4th', '5th', '6th']));
});

test('the present point is a dot on each line that is on the chart', () => {
  expect(draw(GEARS).querySelectorAll('circle')).toHaveLength(4);
});

test('a gap breaks the line', () => {
  const gap = [
    [0, 1],
    [4, 5],
    [5, Number.NaN],
    [6, 7],
    [10, 9],
  ] as const;
  const svg = draw(chart({ series: [{ label: 'Height', points: gap, now: undefined }] }));
  const path = svg.querySelector(`${LINES} path`);
  expect(path?.getAttribute('d')?.match(/M/g)).toHaveLength(2);
});

test('two charts on a page share no id', () => {
  const host = document.createElement('div');
  for (const idPrefix of ['a', 'b'])
    host.append(chartSVG(GEARS, { document, width: 400, idPrefix }));
  const ids = [...host.querySelectorAll('[id]')].map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
});

test('on the page colours follow the page; alone they are literal', () => {
  expect(draw(GEARS).outerHTML).toContain('var(--ink');
  const alone = chartSVG(GEARS, { document, width: 700, idPrefix: 'c', standalone: true });
  const text = new XMLSerializer().serializeToString(alone);
  expect(text).not.toMatch(/var\(|currentColor|light-dark/);
  expect(
    new DOMParser().parseFromString(text, 'image/svg+xml').querySelector('parsererror'),
  ).toBeNull();
  expect(alone.getAttribute('width')).toBe('700');
});

test('a colour on the page is another in the dark', () => {
  const svg = draw(GEARS);
  const stroke = () => getComputedStyle(svg.querySelector('[stroke*="--line-1"] path')!).stroke;
  document.documentElement.style.colorScheme = 'light';
  expect(stroke()).toBe('rgb(0, 114, 178)');
  document.documentElement.style.colorScheme = 'dark';
  expect(stroke()).toBe('rgb(86, 180, 233)');
  document.documentElement.style.colorScheme = '';
});

test.each(CHARTS)('%s: a terminal draws the same', (_, data) => {
  const { document: other } = parseHTML('<!doctype html><html><body></body></html>');
  const paths = (doc: Document) => {
    const svg = chartSVG(data, { document: doc, width: 500, idPrefix: 'c', standalone: true });
    return [...svg.querySelectorAll('path, text, circle, line')].map(
      (element) =>
        ['d', 'x', 'y', 'cx', 'cy', 'x1', 'y1', 'stroke', 'fill'].map((name) =>
          element.getAttribute(name),
        ) + (element.textContent ?? ''),
    );
  };
  expect(paths(other as unknown as Document)).toEqual(paths(document));
});

test('a wished height is kept', () => {
  const svg = chartSVG(chart({}), { document, width: 700, height: 480, idPrefix: 'c' });
  expect(svg.getAttribute('height')).toBe('480');
});
