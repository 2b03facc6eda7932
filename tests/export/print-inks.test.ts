import { describe, expect, test } from 'vitest';
import { resolveInk, resolveInks, toGrey } from '../../src/export/print-inks.ts';

describe('inks of print', () => {
  test.each([
    ['var(--ink, #1c2529)', '#1c2529'],
    ['var(--set-wash, #e5f0f0)', '#e5f0f0'],
    ['var(--paper, #fbf9f4)', '#ffffff'],
    ['var(--line-2, light-dark(#D55E00, #E69F00))', '#D55E00'],
    ['var(--unheard-of)', 'none'],
    ['none', 'none'],
    ['#123456', '#123456'],
  ])('%s is %s', (value, ink) => {
    expect(resolveInk(value)).toBe(ink);
  });

  test('no variable is left anywhere in a drawing', () => {
    const leaf = { name: 'path', attributes: { stroke: 'var(--rule, #d9d3c4)' }, children: [] };
    const tree = { name: 'svg', attributes: { fill: 'var(--ink, #000)' }, children: [leaf] };
    expect(JSON.stringify(resolveInks(tree))).not.toContain('var(');
  });
});

describe('shades of grey', () => {
  const grey = (fill: string) =>
    toGrey({ name: 'path', attributes: { fill }, children: [] }).attributes.fill;

  // Relative luminance of WCAG 2.2: blue 0.0722, green 0.7152, red 0.2126; as sRGB greys.
  test.each([
    ['#ffffff', '#ffffff'],
    ['#000', '#000000'],
    ['#808080', '#808080'],
    ['#0000ff', '#4c4c4c'],
    ['#00ff00', '#dcdcdc'],
    ['#ff0000', '#7f7f7f'],
  ])('%s is as light as %s', (ink, expected) => {
    expect(grey(ink)).toBe(expected);
  });

  test('what is no colour stays', () => {
    expect(grey('none')).toBe('none');
  });
});
