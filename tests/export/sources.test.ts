import { expect, test } from 'vitest';
import { listSources } from '../../src/export/sources.ts';
import { openText } from '../support/notebooks.ts';

test('every source that a sheet names stands beside what it is for', () => {
  const book = openText(
    [
      '```given',
      'gap = 0.2 in "Gap"',
      '  source "the maker"',
      'plain = 1 in "Plain"',
      '```',
      '```check',
      'gap at most 1 in "Not too wide"',
      '  source "common practice, no source"',
      '```',
    ].join('\n'),
  );
  expect(listSources(book, book.sheets[0]!)).toEqual([
    { what: 'Gap', source: 'the maker' },
    { what: 'Window: Not too wide', source: 'common practice, no source' },
  ]);
});
