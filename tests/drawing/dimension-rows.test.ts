import { beforeAll, expect, test } from 'vitest';
import {
  drawDimensions,
  type LevelDimension,
  layOutDimensions,
} from '../../src/drawing/dimension-rows.ts';
import { createPen, createRoot } from '../../src/drawing/svg.ts';
import { findCut, findOverlaps, loadPlate, show } from '../support/drawn.ts';

beforeAll(loadPlate);

const ROWS: readonly LevelDimension[] = [
  dimension(10, 250, 'a long one with more words than fit on a narrow drawing'),
  dimension(140, 150, 'short'),
  dimension(290, 200, 'backwards'),
  dimension(60, 60, 'nought'),
];

test.each([240, 300, 700])('at %i px nothing is cut and nothing overlaps', (width) => {
  const svg = show(drawOn(ROWS, width));
  expect(findCut(svg)).toEqual([]);
  expect(findOverlaps(svg)).toEqual([]);
});

test('a line runs from one place to the other; a short one is pointed at from outside', () => {
  const svg = drawOn(ROWS, 300);
  const lines = [...svg.querySelectorAll('[data-part]')].map((line) => line.getAttribute('d'));
  expect(lines[0]).toMatch(/^M10 .*L250 /);
  expect(lines[1]).toMatch(/^M122 .*L168 /);
});

test('words step aside for a line that runs past them, within their own dimension', () => {
  const [long, past] = [dimension(10, 400, 'long'), dimension(200, 390, 'past')];
  const xOf = (dimensions: readonly LevelDimension[]) =>
    layOutDimensions(dimensions, 420).rows[0]!.letters.x;
  const [free, moved] = [xOf([long]), xOf([long, past])];
  const wide = 2 * (205 - free);
  expect(moved === 204 || Math.abs(moved + wide - 196) < 0.01).toBe(true);
});

test('words that are longer than their dimension stay where they are', () => {
  const [short, past] = [dimension(100, 130, 'far too long'), dimension(115, 300, 'past')];
  const xs = [[short], [short, past]].map((rows) => layOutDimensions(rows, 420).rows[0]!.letters.x);
  expect(xs[1]).toBe(xs[0]);
});

test('no dimensions take no room', () => {
  expect(layOutDimensions([], 300)).toEqual({ height: 0, rows: [] });
});

function dimension(from: number, to: number, words: string): LevelDimension {
  const lead = '2.5 in';
  return { from, to, lead, text: `${lead} ${words}`, fromY: 10, toY: 20, part: 'made' };
}

function drawOn(dimensions: readonly LevelDimension[], width: number): SVGElement {
  const options = { document, width, idPrefix: 'd' };
  const pen = createPen(options);
  const rows = layOutDimensions(dimensions, width);
  const sheet = { title: 'Rows', description: '', width, height: 40 + rows.height };
  const root = createRoot(pen, options, sheet);
  root.append(...drawDimensions(pen, rows, 0, 40));
  return root;
}
