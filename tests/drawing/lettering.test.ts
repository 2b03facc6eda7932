import { beforeAll, expect, test } from 'vitest';
import { createLettering, type Lettering, lettersHeight } from '../../src/drawing/lettering.ts';
import { createElement, createPen } from '../../src/drawing/svg.ts';
import { findOverlaps, listTexts, loadPlate, show } from '../support/drawn.ts';

beforeAll(loadPlate);

const PEN = createPen({ document });
const PLAIN: Lettering = { lines: ['Ågpq', 'second'], x: 5, top: 10, anchor: 'start', size: 13 };

function draw(letters: Lettering): SVGElement {
  const family = { 'font-family': "'Atkinson Hyperlegible Next'", width: 200, height: 100 };
  return show(createElement(PEN, 'svg', family, createLettering(PEN, letters)));
}

test('lines stand one under the other, inside the height that is counted for them', () => {
  const svg = draw(PLAIN);
  const boxes = listTexts(svg);
  expect(boxes.map(({ text }) => text)).toEqual(PLAIN.lines);
  expect(findOverlaps(svg)).toEqual([]);
  expect(boxes[0]!.top).toBeGreaterThanOrEqual(PLAIN.top - 0.5);
  expect(boxes[1]!.bottom).toBeLessThanOrEqual(PLAIN.top + lettersHeight(PLAIN.lines, 13) + 0.5);
});

test('an anchor is always written, whatever the drawing around it says', () => {
  expect(draw(PLAIN).querySelector('text')?.getAttribute('text-anchor')).toBe('start');
});

test('words that lead are bold, the rest is not', () => {
  const svg = draw({ ...PLAIN, lines: ['+ 3.212 in Housing'], lead: '+ 3.212 in' });
  expect(svg.querySelector('tspan')?.textContent).toBe('+ 3.212 in');
  expect(svg.querySelector('text')?.textContent).toBe('+ 3.212 in Housing');
});

test('a halo lies under the letters in the colour of the paper', () => {
  const text = draw({ ...PLAIN, halo: true }).querySelector('text');
  expect(text?.getAttribute('paint-order')).toBe('stroke');
  expect(text?.getAttribute('stroke')).toBe(PEN.inks.paper);
});

test('no lines make no elements', () => {
  expect(createLettering(PEN, { ...PLAIN, lines: [] })).toEqual([]);
});
