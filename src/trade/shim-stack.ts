import type { FunctionDeclaration } from '../language/functions/declaration.ts';
import type { QuantityList } from '../language/kind.ts';

/** Beyond this a search of all stacks would take too long to follow a slider. */
const MOST_SHIMS = 24;
/** Sums closer than this share of the target are the same stack height. */
const SAME = 1e-9;

/** Shims out of a drawer whose thicknesses together come nearest to a height. */
export const NEAREST_STACK: FunctionDeclaration = {
  name: 'nearest_stack',
  doc: 'The shims out of a drawer whose sum comes nearest to a height, thickest first; of equally near stacks the one with fewest shims. Each entry of the list is one shim and is used at most once; no shim for a height of 0 or less.',
  parameters: [
    { name: 'height', shape: 'quantity', dimension: 'a', doc: 'the height to fill' },
    {
      name: 'sizes',
      shape: 'list',
      dimension: 'a',
      doc: 'one thickness a shim, such as [5 thou, 10 thou, 10 thou]',
    },
  ],
  result: { shape: 'list', dimension: 'a' },
  work: {
    type: 'whole',
    run: (height, sizes) => nearestStack(height as number, sizes as QuantityList),
    refuse: (_, sizes) => refuse(sizes as QuantityList),
  },
  example: ['nearest_stack(17 thou, [5 thou, 10 thou, 10 thou, 20 thou])', '[10 thou, 5 thou]'],
  source: 'derived: exhaustive search of the subsets',
  validity: `up to ${MOST_SHIMS} shims of thickness above 0; the sum leaves out burrs and dirt between shims`,
};

function refuse(sizes: QuantityList): string | undefined {
  if (sizes.length > MOST_SHIMS) {
    return `${sizes.length} shims make too many stacks to try; list the ${MOST_SHIMS} likeliest`;
  }
  return sizes.some((size) => size <= 0) ? 'a shim is thicker than 0' : undefined;
}

/** Tries the stacks thickest shim first and gives up a branch that can no longer come nearer. */
function nearestStack(height: number, sizes: QuantityList): QuantityList {
  const sorted = sizes.slice().sort((a, b) => b - a);
  const left = remaindersOf(sorted);
  let best: readonly number[] = [];
  let miss = Math.abs(height);
  const slack = SAME * Math.abs(height);

  const visit = (i: number, total: number, used: readonly number[]): void => {
    const off = Math.abs(height - total);
    if (off < miss - slack || (off <= miss + slack && used.length < best.length)) {
      best = used;
      miss = Math.min(off, miss);
    }
    if (i === sorted.length || total - height > miss || height - (total + left[i]!) > miss) return;
    visit(i + 1, total + sorted[i]!, [...used, sorted[i]!]);
    visit(i + 1, total, used);
  };
  if (height > 0) visit(0, 0, []);
  return Float64Array.from(best);
}

/** For each shim the height of itself and all after it. */
function remaindersOf(sorted: QuantityList): Float64Array {
  const left = new Float64Array(sorted.length + 1);
  for (let i = sorted.length - 1; i >= 0; i -= 1) left[i] = left[i + 1]! + sorted[i]!;
  return left;
}
