import { expect, test, vi } from 'vitest';
import { createStepThrough } from '../../src/page/step-through.ts';
import { openResult, press } from './made-result.ts';
import { textOf } from './test-desk.ts';

function step(name: string) {
  const made = openResult();
  const element = made.show(createStepThrough(made.desk, made.cell(name)));
  const lines = () => [...element.querySelectorAll('.step-lines > li > .work-name')].map(textOf);
  return { ...made, element, lines };
}

test('lines come one at a time, the result last', () => {
  const { element, lines } = step('top');
  expect(lines()).toEqual(['Engine speeds']);
  expect(textOf(element.querySelector('[role=status]'))).toBe('Line 1 of 2.');
  press(element, 'Next line');
  expect(lines()).toEqual(['Engine speeds', 'In top gear']);
  expect(textOf(element.querySelector('[role=status]'))).toBe('Line 2 of 2, the result.');
  expect([...element.querySelectorAll('button')].map(({ disabled }) => disabled)).toEqual([
    true,
    true,
    false,
  ]);
});

test('all lines may be had at once, and the start again', () => {
  const { element, lines } = step('top');
  press(element, 'All lines');
  expect(lines()).toHaveLength(2);
  press(element, 'From the start');
  expect(lines()).toEqual(['Engine speeds']);
});

test('a line has its formula, the numbers in it, and its answer', () => {
  const { element } = step('speeds');
  expect(textOf(element.querySelector('math'))).toMatch(
    /^speeds=wheel×axle×ratios=1000 rpm×3\.07×/,
  );
  expect(textOf(element.querySelector('.step-answer'))).toMatch(/\[9210, 6140, .*\] rpm/);
});

test('a line opens to what it rests on, and how that was measured', () => {
  const { element } = step('speeds');
  const rests = [...element.querySelectorAll('details li')].map(textOf);
  expect(rests).toContain(
    'Wheels: 1000 rpm, measured or chosen. By the road speed. Source: invented',
  );
});

test('what changes on the sheet is followed, and as many lines stand there as before', async () => {
  const { desk, given, element, lines } = step('top');
  press(element, 'Next line');
  desk.enter(given('wheel'), { text: '500' });
  await vi.waitFor(() => expect(textOf(element)).toContain('1230 rpm'));
  expect(lines()).toHaveLength(2);
});

test('a reading has no working', () => {
  expect(textOf(step('wheel').element)).toMatch(/Nothing is worked here/);
});
