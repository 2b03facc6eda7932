import { beforeAll, describe, expect, test } from 'vitest';
import {
  describeHistogram,
  drawHistogram,
  type HistogramData,
} from '../../src/drawing/histogram.ts';
import { createInks } from '../../src/drawing/inks.ts';
import { findCut, findOverlaps, loadPlate, show } from '../support/drawn.ts';

beforeAll(loadPlate);

const bins = (...counts: readonly number[]) =>
  counts.map((count, i) => ({ from: 10 + i, to: 11 + i, count }));

function data(counts: readonly number[], range: HistogramData['range']): HistogramData {
  return {
    title: 'Gap',
    bins: bins(...counts),
    range,
    show: (value) => `${Number(value.toFixed(3))} in`,
  };
}

const HILL = data([1, 4, 10, 4, 1], [11, 14]);

function draw(given: HistogramData, width = 400): SVGElement {
  return show(drawHistogram(given, { document, width, idPrefix: 'h' }));
}

interface Bar {
  readonly x: number;
  readonly foot: number;
  readonly width: number;
  readonly height: number;
  readonly fill: string | null;
}

function barsOf(svg: SVGElement): readonly Bar[] {
  return [...svg.querySelectorAll('rect')].map((bar) => {
    const [x, y, width, height] = ['x', 'y', 'width', 'height'].map((name) =>
      Number(bar.getAttribute(name)),
    ) as [number, number, number, number];
    return { x, width, height, foot: y + height, fill: bar.getAttribute('fill') };
  });
}

describe.each([320, 400, 900])('at %i px', (width) => {
  test('nothing is cut and no words lie over others', () => {
    const svg = draw(HILL, width);
    expect(findCut(svg)).toEqual([]);
    expect(findOverlaps(svg)).toEqual([]);
  });

  test('words whose range is narrow stand one below the other', () => {
    const svg = draw(data([1, 4, 10, 4, 1], [12, 12.1]), width);
    expect(findCut(svg)).toEqual([]);
    expect(findOverlaps(svg)).toEqual([]);
  });
});

test('bars are as high as their counts, on one line, and as wide as their bins', () => {
  const bars = barsOf(draw(HILL));
  const highest = Math.max(...bars.map(({ height }) => height));
  expect(bars.map(({ height }) => height / highest)).toEqual([0.1, 0.4, 1, 0.4, 0.1]);
  expect(new Set(bars.map(({ foot }) => foot)).size).toBe(1);
  expect(bars.map(({ x }) => x)).toEqual([0, 80, 160, 240, 320]);
});

test('bars whose middle lies in the range are told apart', () => {
  const { set, soft } = createInks(false);
  expect(barsOf(draw(HILL)).map(({ fill }) => fill)).toEqual([soft, set, set, set, soft]);
});

test.each([
  ['draws that were all the same', [{ from: 3, to: 3, count: 7 }], [3, 3]],
  ['no draws', [], [1, 2]],
  ['bins that are all empty', bins(0, 0), [10, 12]],
] as const)('%s are drawn too, and nothing lies outside', (_, given, range) => {
  const svg = draw({ ...HILL, bins: given, range });
  expect(svg.outerHTML).not.toMatch(/NaN|Infinity|undefined/);
  expect(findCut(svg)).toEqual([]);
  expect(barsOf(svg)).toHaveLength(given.length);
});

test('the picture in words: how many, where most, and between what', () => {
  expect(describeHistogram(HILL)).toBe(
    '20 draws, most of them near 12.5 in; 95 % lie between 11 in and 14 in.',
  );
  expect(draw(HILL).querySelector('desc')!.textContent).toBe(describeHistogram(HILL));
});
