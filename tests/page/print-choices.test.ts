import { describe, expect, test } from 'vitest';
import { createPrintChoices, readWidth } from '../../src/page/print-choices.ts';

test('what is chosen is read, and told', () => {
  let told = 0;
  const { element, read } = createPrintChoices(() => {
    told += 1;
  });
  expect(read()).toEqual({ width: 140, dotsPerInch: 300, colour: 'colour', lettering: 'outlines' });
  const [width] = element.querySelectorAll('select');
  width!.value = '90';
  width!.dispatchEvent(new Event('change'));
  expect(read().width).toBe(90);
  expect(told).toBe(1);
});

test('another width has a field of its own', () => {
  const { element, read } = createPrintChoices(() => {});
  const free = element.querySelector('input')!;
  expect(free.hidden).toBe(true);
  const [width] = element.querySelectorAll('select');
  width!.value = 'other';
  width!.dispatchEvent(new Event('change'));
  expect(free.hidden).toBe(false);
  free.value = '101.5';
  expect(read().width).toBe(101.5);
});

describe('a width that is typed', () => {
  test.each([
    ['120', 120],
    ['120,5', 120.5],
    ['3', 65],
    ['9999', 400],
    ['-90', 65],
    ['wide', 140],
    ['', 140],
  ])('"%s" is taken as %d mm', (text, width) => {
    expect(readWidth(text)).toBe(width);
  });
});
