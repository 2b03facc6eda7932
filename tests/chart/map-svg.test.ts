import { expect, test } from 'vitest';
import { mapSVG } from '../../src/chart/map-svg.ts';
import { makeMap } from './made-map.ts';

function draw(changes = {}, width = 600): SVGElement {
  const svg = mapSVG(makeMap(changes), { document, width, idPrefix: 'map' });
  document.body.replaceChildren(svg);
  return svg;
}

const texts = (svg: SVGElement) => [...svg.querySelectorAll('text')].map((t) => t.textContent);

test('each line carries its value, the job’s point its own', () => {
  const shown = texts(draw());
  for (const level of ['4', '12', '18']) expect(shown).toContain(level);
  expect(shown).toContain('11');
  expect(draw().querySelectorAll('circle')).toHaveLength(1);
});

test('no value lies over another', () => {
  const svg = draw();
  const boxes = [...svg.querySelectorAll('text[font-weight="700"]')].map((text) =>
    text.getBoundingClientRect(),
  );
  expect(boxes.length).toBeGreaterThan(5);
  for (const [i, a] of boxes.entries()) {
    for (const b of boxes.slice(i + 1)) {
      const apart =
        a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
      expect(apart).toBe(true);
    }
  }
});

test('it has a name and a description, and nothing inside speaks for itself', () => {
  const svg = draw();
  expect(svg.querySelector('title')!.textContent).toBe('Made map');
  expect(svg.querySelector('desc')!.textContent).toMatch(/^Speed over axle from 0 to 4/);
  expect(svg.querySelectorAll('g[aria-label], path[aria-label]')).toHaveLength(0);
});

test('a window is washed between heavy edges', () => {
  const count = (svg: SVGElement) => svg.querySelectorAll('path').length;
  const limits = [{ least: 10, most: 14, label: 'Usual' }];
  expect(count(draw({ limits }))).toBeGreaterThan(count(draw()));
});

test('a map without values or without a job’s point is drawn all the same', () => {
  const empty = draw({ values: new Array(15).fill(Number.NaN), now: undefined });
  expect(texts(empty)).toContain('Tyre, in');
  expect(empty.querySelectorAll('circle')).toHaveLength(0);
});

test('it fits a narrow page', () => {
  expect(Number(draw({}, 300).getAttribute('width'))).toBe(300);
});

test('by itself it is drawn on whole pixels, also within its frame, whatever the screen', () => {
  const alone = mapSVG(makeMap(), { document, width: 600, idPrefix: 'map', standalone: true });
  const moved = [...alone.querySelectorAll('g[transform]')].map((g) => g.getAttribute('transform'));
  expect(moved.filter((transform) => transform?.includes('.'))).toEqual([]);
});
