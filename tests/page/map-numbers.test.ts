import { expect, test } from 'vitest';
import { createMapTable } from '../../src/page/map-numbers.ts';
import { makeMap } from '../chart/made-map.ts';

test('one value runs across, the other down, each a heading', () => {
  const table = createMapTable(makeMap());
  expect(table.querySelector('caption')!.textContent).toBe('Speed, rpm, over Axle');
  expect(table.querySelectorAll('thead th[scope=col]')).toHaveLength(6);
  expect(table.querySelector('tbody th[scope=row]')!.textContent).toBe('2');
  expect(table.querySelectorAll('tbody tr:first-child td')[4]!.textContent).toBe('24');
});
