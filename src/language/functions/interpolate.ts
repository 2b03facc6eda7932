import type { QuantityList, Value } from '../kind.ts';
import type { FunctionDeclaration } from './declaration.ts';

export const INTERPOLATE: FunctionDeclaration = {
  name: 'interpolate',
  doc: 'Reads a curve given by points, along straight lines between them; it does not go beyond its ends.',
  parameters: [
    { name: 'xs', shape: 'list', dimension: 'a', doc: 'where the points stand, rising' },
    { name: 'ys', shape: 'list', dimension: 'b', doc: 'what the curve is there' },
    { name: 'at', shape: 'either', dimension: 'a', doc: 'where to read it' },
  ],
  result: { shape: 'lifted', dimension: 'b' },
  work: { type: 'whole', run: interpolateAll, refuse },
  example: ['interpolate([0, 10], [5 mm, 7 mm], at: 4)', '5.8 mm'],
};

function interpolateAll(xs: Value, ys: Value, at: Value): Value {
  const read = (x: number) => interpolateOne(xs as QuantityList, ys as QuantityList, x);
  return typeof at === 'number' ? read(at) : (at as QuantityList).map(read);
}

/** The curve at one place inside it; bisects, so long curves cost little. */
function interpolateOne(xs: QuantityList, ys: QuantityList, x: number): number {
  let low = 0;
  let high = xs.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (xs[middle]! <= x) low = middle;
    else high = middle;
  }
  if (low === high) return ys[low]!;
  const share = (x - xs[low]!) / (xs[high]! - xs[low]!);
  return ys[low]! + share * (ys[high]! - ys[low]!);
}

function refuse(xs: Value, ys: Value, at: Value): string | undefined {
  const places = xs as QuantityList;
  const wanted = typeof at === 'number' ? [at] : Array.from(at as QuantityList);
  if (places.length === 0) return 'the curve has no points';
  if (places.length !== (ys as QuantityList).length) {
    return `the curve has ${places.length} places and ${(ys as QuantityList).length} values`;
  }
  if (places.some((x, i) => i > 0 && x <= places[i - 1]!)) {
    return 'the places of the curve must rise from one to the next';
  }
  const outside = wanted.some((x) => !(x >= places[0]! && x <= places[places.length - 1]!));
  return outside
    ? 'this lies beyond the ends of the curve, where nothing is known of it'
    : undefined;
}
