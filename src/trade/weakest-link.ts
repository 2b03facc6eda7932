import type { FunctionDeclaration } from '../language/functions/declaration.ts';
import type { QuantityList, Value } from '../language/kind.ts';

const SOURCE = 'derived: the parts compared one case at a time';

/** Which part stands nearest to its limit, case by case. */
export const WEAKEST_LINK: FunctionDeclaration = {
  name: 'weakest_link',
  doc: 'For each case the name of the part that is loaded to the largest share of what it bears. One list of shares a part, in the order of the names; of equal shares the first.',
  parameters: [
    { name: 'names', shape: 'sequence', doc: 'the names of the parts' },
    { name: 'shares', shape: 'list', doc: 'load over limit of one part, one element a case' },
  ],
  several: true,
  result: { shape: 'texts' },
  work: {
    type: 'whole',
    run: (names, ...shares) => nameWeakest(names as readonly string[], shares as QuantityList[]),
    refuse: (names, ...shares) =>
      refuseNames(names as readonly string[], shares) ?? refuseShares(shares),
  },
  example: ['weakest_link(["tube", "joint"], [0.7, 0.5], [0.6, 0.9])', '["tube", "joint"]'],
  source: SOURCE,
  validity:
    'limits that were all found in the same way; a rating with a margin in it and one without do not compare',
};

/** How far the part that stands nearest to its limit is loaded, case by case. */
export const HEAVIEST_SHARE: FunctionDeclaration = {
  name: 'heaviest_share',
  doc: 'For each case the largest of the shares that several parts are loaded to.',
  parameters: [
    { name: 'shares', shape: 'list', doc: 'load over limit of one part, one element a case' },
  ],
  several: true,
  result: { shape: 'list' },
  work: {
    type: 'whole',
    run: (...shares) => heaviest(shares as QuantityList[]),
    refuse: (...shares) => refuseShares(shares),
  },
  example: ['heaviest_share([0.7, 0.5], [0.6, 0.9])', '[0.7, 0.9]'],
  source: SOURCE,
  validity: 'as for weakest_link',
};

/** What arrives of a torque where something slips first. */
export const RELIEVED: FunctionDeclaration = {
  name: 'relieved',
  doc: 'What arrives of a load where something slips at a limit: the load itself or the limit, whichever is less.',
  parameters: [
    { name: 'load', shape: 'either', dimension: 'a', doc: 'the load that is sent' },
    { name: 'limit', shape: 'either', dimension: 'a', doc: 'the load at which something slips' },
  ],
  result: { shape: 'lifted', dimension: 'a' },
  work: {
    type: 'each',
    run: (load, limit) => Math.min(load, limit),
    refuse: () => undefined,
  },
  example: ['relieved([500 N·m, 300 N·m], 400 N·m)', '[400 N·m, 300 N·m]'],
  source: 'derived: what slips passes on no more than its limit',
  validity: 'steady torque; a shock passes before anything has begun to slip',
};

function nameWeakest(names: readonly string[], shares: readonly QuantityList[]): readonly string[] {
  return Array.from(heaviest(shares), (share, place) => {
    const part = shares.findIndex((list) => list[place] === share);
    return `${names[part]}`;
  });
}

function heaviest(shares: readonly QuantityList[]): QuantityList {
  return shares[0]!.map((_, place) => Math.max(...shares.map((list) => list[place]!)));
}

function refuseNames(names: readonly string[], shares: readonly Value[]): string | undefined {
  if (names.length === shares.length) return undefined;
  return `${names.length} names do not go with ${shares.length} lists of shares`;
}

function refuseShares(shares: readonly Value[]): string | undefined {
  const lengths = new Set(shares.map((list) => (list as QuantityList).length));
  return lengths.size === 1 ? undefined : 'the lists of shares are not equally long';
}
