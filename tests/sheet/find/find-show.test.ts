import { expect, test } from 'vitest';
import { createFindShow, finer } from '../../../src/sheet/find/find-show.ts';
import { givenOf, makeGearing } from './made-gearing.ts';

const MADE = makeGearing();

test('an answer is written closer than the given is read, a result as its sheet shows it', () => {
  const show = createFindShow(givenOf(MADE, 'axle_ratio'), MADE.cell('top'), undefined);
  expect(show.given(3.04321)).toBe('3.043');
  expect(show.result(100 * Math.PI).replaceAll('\u00a0', ' ')).toBe('3000 rpm');
  expect(show.givenName).toBe('axle ratio');
  expect(show.resultName).toBe('engine speed in top gear');
});

test('the element of a list is named', () => {
  const show = createFindShow(givenOf(MADE, 'axle_ratio'), MADE.cell('speeds'), '5th');
  expect(show.resultName).toBe('engine speed (5th)');
});

test('without a resolution the digits are left to the value', () => {
  expect(finer({})).toEqual({});
  expect(finer({ resolution: 10 })).toEqual({ resolution: 1 });
});
