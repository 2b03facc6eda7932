import { equalDimensions } from '../units/dimension.ts';
import type { Kind } from './kind.ts';

/** The kind that covers both, or undefined where no value could be of either kind. */
export function unifyKinds(a: Kind, b: Kind): Kind | undefined {
  if (a.type === 'quantity' && b.type === 'quantity') {
    return equalDimensions(a.dimension, b.dimension) ? a : undefined;
  }
  if (a.type === 'list' && b.type === 'list') {
    // An empty list has no dimension of its own.
    if (a.length === 0) return { type: 'list', dimension: b.dimension, ...commonLength(a, b) };
    const alike = b.length === 0 || equalDimensions(a.dimension, b.dimension);
    return alike ? { type: 'list', dimension: a.dimension, ...commonLength(a, b) } : undefined;
  }
  if (a.type === 'texts' && b.type === 'texts') return { type: 'texts', ...commonLength(a, b) };
  if (a.type === 'row' || a.type === 'table') {
    return b.type === a.type && a.columns === b.columns ? a : undefined;
  }
  return a.type === b.type ? a : undefined;
}

interface Sized {
  readonly length?: number;
}

function commonLength(a: Sized, b: Sized): Sized {
  return a.length !== undefined && a.length === b.length ? { length: a.length } : {};
}
