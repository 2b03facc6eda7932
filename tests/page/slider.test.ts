import { beforeEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { createSlider, type Slider, snap, stepFrom } from '../../src/page/slider.ts';

const scale = { from: 0.1, to: 0.25, step: 0.001 };
let moved: number[];
let settled: number;
let slider: Slider;

beforeEach(() => {
  moved = [];
  settled = 0;
  slider = createSlider({
    label: 'Gap to set',
    move: (value) => moved.push(value),
    settle: () => settled++,
  });
  document.body.replaceChildren(slider.element);
  slider.show(scale, 0.15, '0.150 in');
});

const range = (): HTMLInputElement => slider.element.querySelector('input')!;

test('the buttons go one step and settle', async () => {
  const [less, more] = slider.element.querySelectorAll('button');
  await userEvent.click(more!);
  await userEvent.click(less!);
  expect(moved).toEqual([0.151, 0.149]);
  expect(settled).toBe(2);
});

test('arrow keys go one step, Page keys ten, Home and End to the ends', async () => {
  range().focus();
  await userEvent.keyboard('{ArrowRight}{ArrowDown}{PageUp}{Home}{End}');
  expect(moved).toEqual([0.151, 0.149, 0.16, 0.1, 0.25]);
});

test('a drag tells each value, and settles when let go', () => {
  for (const value of ['0.1603', '0.1701']) {
    range().value = value;
    range().dispatchEvent(new Event('input'));
  }
  range().dispatchEvent(new Event('change'));
  expect(moved).toEqual([0.16, 0.17]);
  expect(settled).toBe(1);
});

test('a value typed beyond the scale rests at its end', () => {
  slider.show(scale, 0.4, '0.400 in');
  expect(range().valueAsNumber).toBe(0.25);
  expect(range().getAttribute('aria-valuetext')).toBe('0.400 in');
});

test('at the end of the scale the button does nothing and keeps the focus', async () => {
  slider.show(scale, 0.25, '0.250 in');
  const more = slider.element.querySelectorAll('button')[1]!;
  more.focus();
  await userEvent.keyboard('{Enter}');
  expect(moved).toEqual([]);
  expect(document.activeElement).toBe(more);
});

test('a given that is blank rests at the start', () => {
  slider.show(scale, undefined, 'blank');
  expect(range().valueAsNumber).toBe(0.1);
});

test('the slider is named like its given', () => {
  expect(range().getAttribute('aria-label')).toBe('Gap to set');
  expect([...slider.element.querySelectorAll('button')].map((b) => b.ariaLabel)).toEqual([
    'Less: Gap to set',
    'More: Gap to set',
  ]);
});

test.each([
  ['a value on a step stays', 0.15, 0.15],
  ['a value between goes to the nearer step', 0.15049, 0.15],
  ['a value beyond goes to the end', 7, 0.25],
])('%s', (_, value, snapped) => {
  expect(snap(value, scale)).toBe(snapped);
});

test.each([
  ['from a step to the next', 0.15, 1, 0.151],
  ['from between two steps up to the next', 0.1503, 1, 0.151],
  ['from between two steps down to the next', 0.1503, -1, 0.15],
  ['not beyond the end', 0.25, 1, 0.25],
])('a step goes %s', (_, value, steps, arrived) => {
  expect(stepFrom(value, steps, scale)).toBe(arrived);
});
