import { expect, test } from 'vitest';
import { INKS, lineStyle } from '../../src/chart/chart-palette.ts';
import { contrast } from '../support/contrast.ts';

const LIGHT_PAPER = ['#ffffff', '#fbf9f4'];
const DARK_PAPER = ['#15191b', '#1b2022'];

// WCAG 2.2 SC 1.4.11: graphical objects have a contrast of at least 3:1.
test.each(INKS)('$name has a contrast of 3:1 on light paper and on dark', ({ light, dark }) => {
  for (const paper of LIGHT_PAPER) expect(contrast(light, paper)).toBeGreaterThanOrEqual(3);
  for (const paper of DARK_PAPER) expect(contrast(dark, paper)).toBeGreaterThanOrEqual(3);
});

// Okabe & Ito, Color Universal Design: the published eight.
test('the colours are those that Okabe and Ito published', () => {
  const published = '#000000 #E69F00 #56B4E9 #009E73 #F0E442 #0072B2 #D55E00 #CC79A7'.split(' ');
  const ours = INKS.flatMap(({ light, dark }) => [light, dark]);
  expect(ours.filter((colour) => !published.includes(colour))).toEqual(['#E8E4D9']);
});

test('the first 28 lines differ in colour and dash, the first seven in dash alone', () => {
  const styles = Array.from({ length: 28 }, (_, i) => lineStyle(i, false));
  expect(new Set(styles.map(({ colour, dash }) => `${colour} ${dash}`)).size).toBe(28);
  expect(new Set(styles.slice(0, 7).map(({ dash }) => dash)).size).toBe(7);
});

test('a file that stands alone has literal colours', () => {
  expect(lineStyle(1, true).colour).toBe('#D55E00');
  expect(lineStyle(1, false).colour).toBe('var(--line-2, light-dark(#D55E00, #E69F00))');
});

test('the formula for contrast gives the known values', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
  expect(contrast('#0072B2', '#ffffff')).toBeCloseTo(5.19, 2);
  expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
});
