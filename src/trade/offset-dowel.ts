import type { FunctionDeclaration } from '../language/functions/declaration.ts';
import type { QuantityList } from '../language/kind.ts';

/** The offset dowel that leaves least. */
export const NEAREST_DOWEL: FunctionDeclaration = {
  name: 'nearest_dowel',
  doc: 'The stocked dowel whose offset comes nearest to the offset found; 0, a plain dowel, where that is as near. Of two equally near the smaller.',
  parameters: [
    {
      name: 'offset',
      shape: 'quantity',
      dimension: 'a',
      doc: 'the offset found, half of the total reading',
    },
    { name: 'sizes', shape: 'list', dimension: 'a', doc: 'offsets of the dowels in stock' },
  ],
  result: { shape: 'quantity', dimension: 'a' },
  work: {
    type: 'whole',
    run: (offset, sizes) => nearestOf(offset as number, sizes as QuantityList),
    refuse: (_, sizes) =>
      (sizes as QuantityList).some((size) => size <= 0)
        ? 'an offset dowel is offset by more than 0'
        : undefined,
  },
  example: ['nearest_dowel(6.1 thou, [7 thou, 14 thou, 21 thou])', '7 thou'],
  source: 'derived: the smallest difference',
  validity: 'offsets up to a little above the largest dowel in stock',
  outside: (offset, sizes) => outside(offset as number, sizes as QuantityList),
};

function nearestOf(offset: number, sizes: QuantityList): number {
  return [0, ...sizes.slice().sort((a, b) => a - b)].reduce((best, size) =>
    Math.abs(offset - size) < Math.abs(offset - best) ? size : best,
  );
}

/** Half a step beyond the largest dowel, the next one would be the right one. */
function outside(offset: number, sizes: QuantityList): string | undefined {
  const [last = 0, before = 0] = sizes.slice().sort((a, b) => b - a);
  return sizes.length > 0 && offset > last + (last - before) / 2
    ? 'the offset is beyond the largest dowel in stock; look for the cause, or for another housing'
    : undefined;
}
