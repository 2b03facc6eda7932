import { expect, test } from 'vitest';
import { alone, atMost, fasterBy, formatTable, formatTime, growth } from '../../bench/table.ts';

test.each([
  [0.0000123, '12 ns'],
  [0.0123, '12.30 µs'],
  [12.3, '12.30 ms'],
])('%d milliseconds are written %s', (time, text) => {
  expect(formatTime(time)).toBe(text);
});

test('a bar is met on it and missed beyond it', () => {
  expect(atMost('x', 2, 1, 2)).toMatchObject({ ratio: '2.00 ×', met: true });
  expect(atMost('x', 2.1, 1, 2)).toMatchObject({ met: false });
  expect(fasterBy('x', 1, 20, 20)).toMatchObject({ ratio: '20.00 ×', met: true });
  expect(fasterBy('x', 1, 19, 20)).toMatchObject({ met: false });
  expect(growth('x', 1.1, 1.1)).toMatchObject({ ratio: '1.10', met: true });
  expect(growth('x', 1.2, 1.1)).toMatchObject({ met: false });
});

test('rows stand in columns, numbers to the right', () => {
  expect(formatTable([alone('short', 1), atMost('rather long', 1, 2, 2)]).split('\n')).toEqual([
    'what         Layshaft  beside it   ratio    bar',
    'short         1.00 ms',
    'rather long   1.00 ms    2.00 ms  0.50 ×  ≤ 2 ×  met',
  ]);
});
