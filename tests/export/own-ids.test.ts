import { expect, test } from 'vitest';
import { countOwnIds } from '../../src/export/own-ids.ts';

const leaf = (attributes: Record<string, string>) => ({ name: 'g', attributes, children: [] });

test('ids are counted from 1, and what refers to them follows', () => {
  const tree = {
    name: 'svg',
    attributes: { 'aria-labelledby': 'x-title other' },
    children: [
      leaf({ id: 'x-title' }),
      leaf({ id: 'plot-clip-17' }),
      leaf({ 'clip-path': 'url(#plot-clip-17)', fill: 'url(#elsewhere)' }),
      leaf({ href: '#plot-clip-17' }),
    ],
  };
  expect(countOwnIds(tree)).toEqual({
    name: 'svg',
    attributes: { 'aria-labelledby': 'part-1 other' },
    children: [
      leaf({ id: 'part-1' }),
      leaf({ id: 'part-2' }),
      leaf({ 'clip-path': 'url(#part-2)', fill: 'url(#elsewhere)' }),
      leaf({ href: '#part-2' }),
    ],
  });
});
