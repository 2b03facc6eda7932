import { describe, expect, test } from 'vitest';
import type { Kind } from '../../src/language/kind.ts';
import { unifyKinds } from '../../src/language/unify.ts';

const LENGTH: Kind = { type: 'quantity', dimension: [1, 0, 0, 0] };
const TIME: Kind = { type: 'quantity', dimension: [0, 0, 1, 0] };
const list = (length?: number, dimension = [1, 0, 0, 0] as const): Kind => ({
  type: 'list',
  dimension,
  ...(length === undefined ? {} : { length }),
});
const columns = new Map([['rate', LENGTH]]);

describe('the kind that covers two', () => {
  test.each<[string, Kind, Kind, Kind | undefined]>([
    ['one dimension', LENGTH, LENGTH, LENGTH],
    ['two dimensions', LENGTH, TIME, undefined],
    ['a quantity and a list', LENGTH, list(2), undefined],
    ['lists of one length', list(2), list(2), list(2)],
    ['lists of two lengths', list(2), list(3), list()],
    ['a list of unknown length', list(2), list(), list()],
    [
      'an empty list and a list of plain numbers',
      list(0, [1, 0, 0, 0]),
      list(2, [0, 0, 0, 0] as never),
      list(undefined, [0, 0, 0, 0] as never),
    ],
    ['a list and an empty list', list(2), list(0, [0, 0, 0, 0] as never), list()],
    ['texts', { type: 'texts', length: 2 }, { type: 'texts', length: 3 }, { type: 'texts' }],
    ['text and texts', { type: 'text' }, { type: 'texts' }, undefined],
    ['truths', { type: 'truth' }, { type: 'truth' }, { type: 'truth' }],
    [
      'rows of one table',
      { type: 'row', columns },
      { type: 'row', columns },
      { type: 'row', columns },
    ],
    [
      'rows of two tables',
      { type: 'row', columns },
      { type: 'row', columns: new Map(columns) },
      undefined,
    ],
    ['a row and its table', { type: 'row', columns }, { type: 'table', columns }, undefined],
  ])('%s', (_, a, b, covers) => {
    expect(unifyKinds(a, b)).toEqual(covers);
  });
});
