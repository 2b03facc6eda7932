import { NONE } from '../../units/dimension.ts';
import type { QuantityList, Value } from '../kind.ts';
import { type FunctionDeclaration, never, type Parameter } from './declaration.ts';

const values: Parameter = {
  name: 'values',
  shape: 'either',
  dimension: 'a',
  doc: 'a list, or several quantities',
};
const list: Parameter = {
  name: 'list',
  shape: 'list',
  dimension: 'a',
  doc: 'a list of quantities',
};
const sequence: Parameter = {
  name: 'list',
  shape: 'sequence',
  dimension: 'a',
  doc: 'a list of quantities or texts',
};
const limit: Parameter = { name: 'limit', shape: 'quantity', dimension: 'a', doc: 'the limit' };

type Sequence = QuantityList | readonly string[];

export const LISTS: readonly FunctionDeclaration[] = [
  extreme('min', 'The smallest of a list or of several quantities.', -1, [
    'min(3 in, 2 in)',
    '2 in',
  ]),
  extreme('max', 'The largest of a list or of several quantities.', 1, ['max([1, 5, 3])', '5']),
  {
    name: 'sum',
    doc: 'All elements of a list added up; 0 for an empty list.',
    parameters: [list],
    result: { shape: 'quantity', dimension: 'a' },
    work: {
      type: 'whole',
      run: (x) => (x as QuantityList).reduce((a, b) => a + b, 0),
      refuse: never,
    },
    example: ['sum([1 in, 2 in])', '3 in'],
  },
  {
    name: 'count',
    doc: 'How many elements a list has.',
    parameters: [sequence],
    result: { shape: 'quantity', dimension: NONE },
    work: { type: 'whole', run: (x) => (x as Sequence).length, refuse: never },
    example: ['count([5, 6, 7])', '3'],
  },
  element('first', 'The first element of a list.', (x) => (x as Sequence)[0]!, [
    'first([5, 6, 7])',
    '5',
  ]),
  element(
    'last',
    'The last element of a list.',
    (x) => (x as Sequence)[(x as Sequence).length - 1]!,
    ['last([5, 6, 7])', '7'],
  ),
  {
    name: 'item',
    doc: 'One element of a list by its place, counted from 1.',
    parameters: [sequence, { name: 'place', shape: 'quantity', doc: 'a whole number from 1' }],
    result: { shape: 'element', dimension: 'a' },
    work: {
      type: 'whole',
      run: (x, place) => (x as Sequence)[(place as number) - 1]!,
      refuse: (x, place) =>
        isPlace(x as Sequence, place as number)
          ? undefined
          : `there is no element ${place} in a list of ${(x as Sequence).length}`,
    },
    example: ['item([5, 6, 7], 2)', '6'],
  },
  part('without_first', 'A list without its first element.', 1, 0, [
    'without_first([5, 6, 7])',
    '[6, 7]',
  ]),
  part('without_last', 'A list without its last element.', 0, 1, [
    'without_last([5, 6, 7])',
    '[5, 6]',
  ]),
  sorted('descending', 'A list sorted from the largest to the smallest.', -1, [
    'descending([1, 3, 2])',
    '[3, 2, 1]',
  ]),
  sorted('ascending', 'A list sorted from the smallest to the largest.', 1, [
    'ascending([1, 3, 2])',
    '[1, 2, 3]',
  ]),
  {
    name: 'ordinals',
    doc: 'The place of each element as a word: 1st, 2nd, 3rd …',
    parameters: [sequence],
    result: { shape: 'texts' },
    work: {
      type: 'whole',
      run: (x) => nameOrdinals((x as Sequence).length),
      refuse: never,
    },
    example: ['ordinals([3.5, 2.0])', '["1st", "2nd"]'],
  },
  {
    name: 'largest_up_to',
    doc: 'The largest element that is not above a limit.',
    parameters: [list, limit],
    result: { shape: 'quantity', dimension: 'a' },
    work: {
      type: 'whole',
      run: (x, most) => furthest(x as QuantityList, most as number, 1),
      refuse: (x, most) =>
        Number.isFinite(furthest(x as QuantityList, most as number, 1))
          ? undefined
          : 'every element is above the limit',
    },
    example: ['largest_up_to([1, 4, 9], 5)', '4'],
  },
  {
    name: 'smallest_from',
    doc: 'The smallest element that is not below a limit.',
    parameters: [list, limit],
    result: { shape: 'quantity', dimension: 'a' },
    work: {
      type: 'whole',
      run: (x, least) => furthest(x as QuantityList, least as number, -1),
      refuse: (x, least) =>
        Number.isFinite(furthest(x as QuantityList, least as number, -1))
          ? undefined
          : 'every element is below the limit',
    },
    example: ['smallest_from([1, 4, 9], 5)', '9'],
  },
];

/** The names for each count that was asked for before: gears are few and always the same. */
const ORDINALS: (readonly string[])[] = [];

/** Mutates what is known where it does not reach so far. */
function nameOrdinals(count: number): readonly string[] {
  ORDINALS[count] ??= Array.from({ length: count }, (_, i) => ordinal(i + 1));
  return ORDINALS[count];
}

/** 1st, 2nd, 3rd, 4th … 11th, 12th, 13th … 21st. */
export function ordinal(n: number): string {
  const teen = n % 100 >= 11 && n % 100 <= 13;
  const ending = teen ? 'th' : (['th', 'st', 'nd', 'rd'][n % 10] ?? 'th');
  return `${n}${ending}`;
}

function emptiness(x: Value): string | undefined {
  return (x as Sequence).length === 0 ? 'the list is empty' : undefined;
}

function isPlace(x: Sequence, place: number): boolean {
  return Number.isInteger(place) && place >= 1 && place <= x.length;
}

function extreme(
  name: string,
  doc: string,
  sign: 1 | -1,
  example: readonly [string, string],
): FunctionDeclaration {
  const best = (value: Value): number =>
    typeof value === 'number'
      ? value
      : furthest(value as QuantityList, sign * Number.POSITIVE_INFINITY, sign);
  const isEmpty = (value: Value) =>
    typeof value !== 'number' && (value as QuantityList).length === 0;
  const pick = (a: number, b: number) => (sign * (a - b) > 0 ? a : b);
  return {
    name,
    doc,
    parameters: [values],
    several: true,
    result: { shape: 'quantity', dimension: 'a' },
    work: {
      type: 'whole',
      run(...given) {
        let found = best(given[0]!);
        for (let i = 1; i < given.length; i += 1) found = pick(found, best(given[i]!));
        return found;
      },
      refuse: (...given) => (given.every(isEmpty) ? 'the list is empty' : undefined),
    },
    example,
  };
}

/**
 * The element that lies furthest on the side of the sign and not beyond the limit; infinite where
 * there is none.
 */
function furthest(list: QuantityList, limit: number, sign: 1 | -1): number {
  let found = -sign * Number.POSITIVE_INFINITY;
  for (let i = 0; i < list.length; i += 1) {
    const x = list[i]!;
    if (sign * (limit - x) >= 0 && sign * (x - found) > 0) found = x;
  }
  return found;
}

function element(
  name: string,
  doc: string,
  run: (x: Value) => number | string,
  example: readonly [string, string],
): FunctionDeclaration {
  return {
    name,
    doc,
    parameters: [sequence],
    result: { shape: 'element', dimension: 'a' },
    work: { type: 'whole', run, refuse: emptiness },
    example,
  };
}

/** What is left of a list when so many elements are taken off its head and its tail. */
function part(
  name: string,
  doc: string,
  head: number,
  tail: number,
  example: readonly [string, string],
): FunctionDeclaration {
  return {
    name,
    doc,
    parameters: [sequence],
    result: { shape: 'sequence', dimension: 'a' },
    work: {
      type: 'whole',
      run: (x) => copy(x as Sequence, head, (x as Sequence).length - tail),
      refuse: emptiness,
    },
    example,
  };
}

/** Element by element: for lists as short as those of gears the platform's own way takes three times as long. */
function copy(x: Sequence, from: number, to: number): Sequence {
  if (!(x instanceof Float64Array)) return x.slice(from, to);
  const out = new Float64Array(to - from);
  for (let i = 0; i < out.length; i += 1) out[i] = x[from + i]!;
  return out;
}

function sorted(
  name: string,
  doc: string,
  sign: 1 | -1,
  example: readonly [string, string],
): FunctionDeclaration {
  return {
    name,
    doc,
    parameters: [list],
    result: { shape: 'list', dimension: 'a' },
    work: {
      type: 'whole',
      run: (x) =>
        sortNumbers(copy(x as QuantityList, 0, (x as QuantityList).length) as QuantityList, sign),
      refuse: never,
    },
    example,
  };
}

/** Sorts by insertion, which is the fastest for lists as short as those of gears. Mutates the list. */
function sortNumbers(numbers: Float64Array, sign: 1 | -1): Float64Array {
  if (numbers.length > 32) return sign > 0 ? numbers.sort() : numbers.sort().reverse();
  for (let i = 1; i < numbers.length; i += 1) {
    const x = numbers[i]!;
    let j = i;
    for (; j > 0 && sign * (numbers[j - 1]! - x) > 0; j -= 1) numbers[j] = numbers[j - 1]!;
    numbers[j] = x;
  }
  return numbers;
}
