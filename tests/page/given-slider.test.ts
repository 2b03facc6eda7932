import { expect, test } from 'vitest';
import { createGivenSlider, formatStep } from '../../src/page/given-slider.ts';
import { createTestDesk } from './test-desk.ts';

const SHEET = `
\`\`\`given
gap = 0.150 in "Gap to set" from 0.100 in to 0.250 in to 0.005
ratio = 3.25 "Ratio" from 2 to 4
width = 3 in "Width"
\`\`\`
`;

function createSlider(name: string) {
  const test = createTestDesk(SHEET);
  const slider = createGivenSlider(test.desk, test.given(name))!;
  slider.refresh();
  document.body.replaceChildren(slider.element);
  const range = slider.element.querySelector('input')!;
  const drag = (value: string): void => {
    range.value = value;
    range.dispatchEvent(new Event('input'));
  };
  return { ...test, slider, range, drag };
}

test('a given without a range has no slider', () => {
  const { desk, given } = createTestDesk(SHEET);
  expect(createGivenSlider(desk, given('width'))).toBeUndefined();
});

test('the scale is in the unit of the field', () => {
  const { range } = createSlider('gap');
  expect([range.min, range.max, range.value]).toEqual(['0.1', '0.25', '0.15']);
});

test('on a metric page scale and step are metric', () => {
  const { desk, given, slider, range } = createSlider('gap');
  desk.chooseSystem('metric');
  slider.refresh();
  expect([range.min, range.max]).toEqual(['2.54', '6.35']);
  slider.element.querySelectorAll('button')[1]!.click();
  expect(desk.entryOf(given('gap'))).toEqual({ text: '3.9', unit: 'mm' });
});

test('a drag writes what a person would type, and is one step', () => {
  const { desk, given, range, drag } = createSlider('gap');
  drag('0.1612');
  drag('0.1801');
  range.dispatchEvent(new Event('change'));
  drag('0.2');
  expect(desk.entryOf(given('gap'))).toEqual({ text: '0.200', unit: 'in' });
  expect(desk.history().past.map((step) => step.label)).toEqual([
    'Gap to set, 0.150 in to 0.180 in',
    'Gap to set, 0.180 in to 0.200 in',
  ]);
});

test('without a declared step there are a hundred', () => {
  const { desk, given, slider } = createSlider('ratio');
  slider.element.querySelectorAll('button')[1]!.click();
  expect(desk.entryOf(given('ratio'))).toEqual({ text: '3.26' });
});

test.each([
  [0.2, 0.005, '0.200'],
  [70, 1, '70'],
  [1500, 50, '1500'],
  [0.00002, 1e-5, '0.00002'],
])('%d at a step of %d is written %s', (value, step, text) => {
  expect(formatStep(value, step)).toBe(text);
});
