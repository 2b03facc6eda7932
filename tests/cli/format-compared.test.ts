import { expect, test } from 'vitest';
import type { CompareRecord } from '../../src/cli/compare-record.ts';
import { formatCompared } from '../../src/cli/format-compared.ts';

const RECORD: CompareRecord = {
  sheet: 's',
  columns: [
    { name: 'As it is', problems: [] },
    { name: 'B', problems: ['Ratio: no number.'] },
  ],
  results: {
    out: {
      label: 'Out',
      unit: 'rpm',
      values: [1, 2],
      texts: ['1 rpm', '2 rpm'],
      differences: [null, '+1 rpm, more'],
      differs: true,
    },
    same: {
      label: 'Same',
      unit: '',
      values: [3, 3],
      texts: ['3', '3'],
      differences: [null, 'the same'],
      differs: false,
    },
  },
  problems: [],
};

test('what differs comes first, what is the same once, what is wrong last', () => {
  expect(formatCompared({ title: 'Title' } as never, RECORD)).toBe(
    [
      'Title',
      'Out\n  As it is  1 rpm\n  B         2 rpm  (+1 rpm, more)',
      'The same in every column\n  Same: 3',
      'Problems\n  B: Ratio: no number.\n',
    ].join('\n\n'),
  );
});
