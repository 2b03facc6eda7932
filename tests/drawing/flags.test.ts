import { beforeAll, expect, test } from 'vitest';
import { drawFlags, type Flag, layOutFlags } from '../../src/drawing/flags.ts';
import { createPen, createRoot } from '../../src/drawing/svg.ts';
import { findCut, findOverlaps, loadPlate, show } from '../support/drawn.ts';

beforeAll(loadPlate);

const PLACES: readonly (readonly [name: string, xs: readonly number[]])[] = [
  ['one', [150]],
  ['at both edges', [0, 299]],
  ['a crowd', [100, 104, 108, 112, 116]],
  ['all at one place', [200, 200, 200]],
];

test.each(PLACES)('%s: words are neither cut nor over one another', (_, xs) => {
  const flags = xs.map((x, i) => ({ x, y: 20, text: `${i}.25 in of some length or other` }));
  const svg = show(drawOn(flags, 300));
  expect(findCut(svg)).toEqual([]);
  expect(findOverlaps(svg)).toEqual([]);
});

test('a leader ends in a dot on its point', () => {
  const svg = drawOn([{ x: 120, y: 33, text: 'here' }], 300);
  const { height } = layOutFlags([{ x: 120, y: 33, text: 'here' }], 300);
  const dot = svg.querySelector('circle')!;
  expect(Number(dot.getAttribute('cx'))).toBe(120);
  expect(Number(dot.getAttribute('cy'))).toBeCloseTo(height + 33, 1);
});

test('no flags take no room', () => {
  expect(layOutFlags([], 300)).toEqual({ height: 0, flags: [] });
});

function drawOn(flags: readonly Flag[], width: number): SVGElement {
  const options = { document, width, idPrefix: 'f' };
  const pen = createPen(options);
  const row = layOutFlags(flags, width);
  const sheet = { title: 'Flags', description: '', width, height: row.height + 60 };
  const root = createRoot(pen, options, sheet);
  root.append(...drawFlags(pen, row, row.height));
  return root;
}
