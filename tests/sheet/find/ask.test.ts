import { expect, test } from 'vitest';
import { type Asked, listAskable, understandQuestion } from '../../../src/sheet/find/ask.ts';
import { findGiven } from '../../../src/sheet/find/find-given.ts';
import { givenOf, makeGearing } from './made-gearing.ts';

const MADE = makeGearing();
const RPM = Math.PI / 30;

function ask(asked: Partial<Asked> & { readonly target: string }) {
  return understandQuestion(MADE.book, MADE.frame, {
    result: MADE.cell('top'),
    given: givenOf(MADE, 'axle_ratio'),
    ...asked,
  });
}

function answer(asked: Parameters<typeof ask>[0]) {
  const understood = ask(asked);
  if (understood.state !== 'question') throw new Error(JSON.stringify(understood));
  return findGiven(MADE.book, MADE.frame, understood.question);
}

test('a bare target is in the unit of the result, and the exact answer is found', () => {
  // By hand: 1000 rpm × axle × 0.8 = 2400 rpm gives an axle of 3.
  expect(answer({ target: '2400' }).solutions[0]!.from).toBeCloseTo(3, 9);
  expect(answer({ target: '40 rev/s' }).solutions[0]!.from).toBeCloseTo(3, 9);
});

test('the rows of the column that a given is picked from stand beside the answer', () => {
  const { stocked } = answer({ target: '2400' });
  expect(stocked.map(({ given }) => given)).toEqual([3.07, 3.25, 3.73]);
  expect(stocked[0]!.result / RPM).toBeCloseTo(2456, 6);
});

test('one number of a list can be asked for', () => {
  const found = answer({ result: MADE.cell('speeds'), element: 3, target: '3000 rpm' });
  expect(found.solutions[0]!.from).toBeCloseTo(3, 9);
});

test('a question may go over several sheets', () => {
  const found = answer({ result: MADE.cell('20-shaft/shaft'), target: '1200 rpm' });
  expect(found.solutions[0]!.from).toBeCloseTo(3, 9);
});

test('a range that was typed rules, whichever end is typed first', () => {
  expect(answer({ target: '2400', from: '4', to: '3.5' })).toMatchObject({
    from: 3.5,
    to: 4,
    solutions: [],
  });
});

test('a given without a range is searched around its value', () => {
  const found = answer({ given: givenOf(MADE, 'wheel'), target: '1300 rpm' });
  expect(found.solutions[0]!.from / RPM).toBeCloseTo(500, 6);
  expect(found.from / RPM).toBeCloseTo(250, 6);
});

test.each([
  ['nothing typed', { target: ' ' }, /^Type what the result should be\.$/],
  ['another dimension', { target: '3 in' }, /^Target: .*length.*turning speed/],
  ['no number', { target: 'fast' }, /^Target: /],
  ['an end that cannot be read', { target: '2400', from: '1,,2' }, /^From: /],
  ['an end of another dimension', { target: '2400', to: '3 in' }, /^To: /],
  [
    'a given without range and value',
    { target: '1', given: givenOf(MADE, 'spare') },
    /^Spare has no range in the sheet: say from where to where to search\.$/,
  ],
  ['a range of no length', { target: '1', from: '3', to: '3' }, /say from where to where/],
  ['a result without numbers', { target: '1', result: MADE.cell('gear') }, /holds no numbers/],
] as const)('%s is told', (_, asked, words) => {
  const understood = ask(asked);
  expect(understood).toEqual({ state: 'refused', sentence: expect.stringMatching(words) });
});

test('a given that is picked from a table and is no single figure has its rows tried', () => {
  expect(ask({ given: givenOf(MADE, 'ratios'), target: '3000 rpm' })).toEqual({
    state: 'rows',
    target: expect.closeTo(3000 * RPM, 9),
  });
});

test('a given that is words has neither range nor rows', () => {
  expect(ask({ given: givenOf(MADE, 'colour'), target: '3000 rpm' })).toMatchObject({
    sentence: expect.stringMatching(/^Colour is not one quantity/),
  });
});

test('asked back to are the quantities and picks that a result hangs on, its own sheet’s first', () => {
  const names = (result: string) => listAskable(MADE.book, MADE.cell(result)).map(({ id }) => id);
  expect(names('top')).toEqual(['10-gearing/axle_ratio', '10-gearing/ratios', '10-gearing/wheel']);
  expect(names('20-shaft/shaft')[0]).toBe('20-shaft/split');
});
