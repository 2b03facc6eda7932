import { describe, expect, test } from 'vitest';
import { createProbe, pathBetween } from '../../src/sheet/probe.ts';
import { block, makeSheet } from './made-book.ts';

//  a ──▶ c ──▶ both       b ──▶ d ──▶ total ◀── c       other ──▶ apart
const MADE = makeSheet(
  block('given', 'a = 2', 'b = 3', 'other = 5', 'spare = blank') +
    block(
      'work',
      'c = a * 10',
      'd = b + 1',
      'total = c + d',
      'both = [1, 2] * c',
      'ratio = 1 / a',
      'filled = spare otherwise a',
      'apart = other * 2',
    ),
);
const indices = (...names: readonly string[]) => names.map((name) => MADE.cell(name).index);
const probe = (givens: readonly string[], results: readonly string[]) =>
  createProbe(MADE.book, MADE.frame, indices(...givens), indices(...results));

describe('a probe', () => {
  test('works the results with other values for the givens, again and again', () => {
    const { at } = probe(['a', 'b'], ['total']);
    expect([at([2, 3]), at([0, 0]), at([2, 3])]).toEqual([[24], [1], [24]]);
  });

  test('gives all numbers in a row, or each result’s own', () => {
    const { at, eachAt } = probe(['a'], ['total', 'both', 'c']);
    expect(at([1])).toEqual([14, 10, 20, 10]);
    expect(eachAt([1])).toEqual([[14], [10, 20], [10]]);
  });

  test('gives NaN, or no element, where there is no value', () => {
    const { eachAt } = probe(['a'], ['ratio', 'both']);
    expect(eachAt([0])).toEqual([[Number.NaN], [0, 0]]);
    expect(eachAt([Number.NaN])).toEqual([[Number.NaN], []]);
  });

  test('fills in a given that was left blank', () => {
    expect(probe(['spare'], ['filled']).at([7])).toEqual([7]);
  });

  test('of a given itself gives what was put in', () => {
    expect(probe(['a'], ['a']).at([7])).toEqual([7]);
  });

  test('leaves what does not hang on the givens at its present value', () => {
    expect(probe(['a'], ['apart', 'd']).at([99])).toEqual([10, 4]);
  });

  test('leaves the frame as it was', () => {
    const before = structuredClone(MADE.frame);
    probe(['a', 'spare'], ['total', 'both', 'filled']).at([99, 98]);
    expect(MADE.frame).toEqual(before);
  });
});

describe('only what lies between a given and a result is worked', () => {
  test.each([
    [['a'], ['total'], ['c', 'total']],
    [['a', 'b'], ['total'], ['c', 'd', 'total']],
    [['a'], ['apart'], []],
    [['a', 'c'], ['total'], ['total']],
    [[], ['total'], []],
    [['a'], [], []],
  ])('between %j and %j lie %j', (givens, results, path) => {
    const found = pathBetween(MADE.book, indices(...givens), indices(...results));
    expect(found.map((index) => MADE.book.cells[index]!.name)).toEqual(path);
  });
});
