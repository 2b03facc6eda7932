import { beforeAll, expect, test } from 'vitest';
import { drawKey, KEY_SIZE, layOutKey } from '../../src/drawing/key.ts';
import { LINE } from '../../src/drawing/lettering.ts';
import { createElement, createPen, createRoot } from '../../src/drawing/svg.ts';
import { findCut, findOverlaps, loadPlate, show } from '../support/drawn.ts';

beforeAll(loadPlate);

const ENTRIES = [
  { text: 'The bore’s centre stands 11.8 thou from the crank’s axis, toward 10:16.' },
  { text: 'Dowels of 14 thou, throw toward 4:16.' },
  { text: 'A-word-that-is-far-too-long-for-any-narrow-page-and-has-no-blank-in-it' },
];

test.each([120, 300, 700])('at %i px nothing is cut and nothing overlaps', (width) => {
  const pen = createPen({ document });
  const mark = (cx: number, cy: number) => [createElement(pen, 'circle', { cx, cy, r: 4 })];
  const key = layOutKey(
    ENTRIES.map((entry) => ({ ...entry, mark })),
    0,
    0,
    width,
  );
  const sheet = { title: 'Key', description: '', width, height: Math.ceil(key.foot) };
  const root = createRoot(pen, { document, width, idPrefix: 'k' }, sheet);
  root.append(...drawKey(pen, key));
  const svg = show(root);
  expect(findCut(svg)).toEqual([]);
  expect(findOverlaps(svg)).toEqual([]);
  expect(svg.querySelectorAll('circle')).toHaveLength(3);
});

test('a mark stands beside the first line, left of the words', () => {
  const marks: (readonly [number, number])[] = [];
  const entry = {
    text: 'Words',
    mark: (x: number, y: number) => {
      marks.push([x, y]);
      return [];
    },
  };
  drawKey(createPen({ document }), layOutKey([entry], 50, 100, 200));
  expect(marks[0]![0]).toBeGreaterThan(50);
  expect(marks[0]![0]).toBeLessThan(80);
  expect(marks[0]![1]).toBeCloseTo(100 + (KEY_SIZE * LINE) / 2, 9);
});

test('no entries take no room', () => {
  expect(layOutKey([], 0, 7, 300)).toEqual({ rows: [], foot: 7 });
});
