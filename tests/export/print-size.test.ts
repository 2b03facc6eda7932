import { describe, expect, test } from 'vitest';
import {
  layoutWidth,
  MM_PER_PX,
  pixelsAcross,
  sizeForPrint,
  thickenLines,
} from '../../src/export/print-size.ts';

const line = (width: string) => ({
  name: 'path',
  attributes: { 'stroke-width': width },
  children: [],
});

describe('the size on paper', () => {
  test('twelve px of the layout are seven points', () => {
    expect((12 * MM_PER_PX * 72) / 25.4).toBeCloseTo(7, 12);
  });

  test('a narrower figure is laid out for fewer px, not scaled', () => {
    expect(layoutWidth(90)).toBe(437);
    expect(layoutWidth(190)).toBe(923);
  });

  test.each([
    [90, 300, 1063],
    [140, 600, 3307],
    [190, 1000, 7480],
    [25.4, 300, 300],
  ])('%i mm at %i dots per inch are %i pixels', (mm, dots, pixels) => {
    expect(pixelsAcross(mm, dots)).toBe(pixels);
  });

  test('stands in the file in mm, in the shape of the drawing', () => {
    const tree = { name: 'svg', attributes: { viewBox: '0 0 437 218.5' }, children: [] };
    expect(sizeForPrint(tree, 90).attributes).toMatchObject({ width: '90mm', height: '45mm' });
  });
});

describe('lines', () => {
  test('thinner than half a point are drawn at half a point', () => {
    const width = Number(thickenLines(line('0.7')).attributes['stroke-width']);
    expect((width * MM_PER_PX * 72) / 25.4).toBeGreaterThanOrEqual(0.5);
    expect((width * MM_PER_PX * 72) / 25.4).toBeLessThan(0.502);
  });

  test('that are thick enough stay as they are', () => {
    expect(thickenLines(line('2'))).toEqual(line('2'));
  });
});
