import { expect, test } from 'vitest';
import { describeGauge, describeSides } from '../../src/drawing/gauge-words.ts';

const least = { value: 0.125, text: '0.125 in' };
const most = { value: 0.2, text: '0.200 in' };
const one = (value: number, text: string) => [{ value, text }];

test.each([
  [
    { title: 'Bearing gap', least, most, values: one(0.165, '0.165 in') },
    'Limit gauge with a window from 0.125 in to 0.200 in. Bearing gap is 0.165 in, inside.',
  ],
  [
    { title: 'Bearing gap', least, values: one(0.1, '0.100 in') },
    'Limit gauge: at least 0.125 in. Bearing gap is 0.100 in, below the window.',
  ],
  [
    { title: 'Drop', most, values: [{ label: '1st to 2nd', value: 0.3, text: '0.300 in' }] },
    'Limit gauge: at most 0.200 in. 1st to 2nd is 0.300 in, above the window.',
  ],
  [{ title: 'Gap', values: one(Number.NaN, '') }, 'Gauge without limits. Gap is not known yet.'],
])('%o reads well', (data, words) => {
  expect(describeGauge(data)).toBe(words);
});

test('a side says where it starts; one without a limit says nothing', () => {
  const data = { title: '', least, values: [], below: 'It slips.', above: 'Never said.' };
  expect(describeSides(data)).toEqual({ below: 'Below 0.125 in: It slips.', above: '' });
});
