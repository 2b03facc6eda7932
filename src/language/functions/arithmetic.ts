import { raiseDimension } from '../../units/dimension.ts';
import type { FunctionDeclaration } from './declaration.ts';
import { never } from './declaration.ts';

const ANY = {
  name: 'value',
  shape: 'either',
  dimension: 'a',
  doc: 'any quantity or list',
} as const;
const PLAIN = { name: 'value', shape: 'either', doc: 'a plain number or a list of them' } as const;
const STEP = {
  name: 'step',
  shape: 'quantity',
  dimension: 'a',
  fallback: 1,
  doc: 'what to round to, such as 0.001 in; 1 for plain numbers when left out',
} as const;

export const ARITHMETIC: readonly FunctionDeclaration[] = [
  {
    name: 'abs',
    doc: 'The size of a quantity without its sign.',
    parameters: [ANY],
    result: { shape: 'lifted', dimension: 'a' },
    work: { type: 'each', run: Math.abs, refuse: never },
    example: ['abs(2 in - 5 in)', '3 in'],
  },
  {
    name: 'sqrt',
    doc: 'Square root; the root of an area is a length.',
    parameters: [ANY],
    result: { shape: 'lifted', dimension: ({ a }) => raiseDimension(a!, 0.5) },
    work: {
      type: 'each',
      run: Math.sqrt,
      refuse: (x) => (x < 0 ? 'the square root of a negative is not a real number' : undefined),
    },
    example: ['sqrt(9 in^2)', '3 in'],
  },
  {
    name: 'exp',
    doc: 'e raised to a plain number.',
    parameters: [PLAIN],
    result: { shape: 'lifted' },
    work: { type: 'each', run: Math.exp, refuse: never },
    example: ['exp(0)', '1'],
  },
  {
    name: 'ln',
    doc: 'Natural logarithm of a plain number.',
    parameters: [PLAIN],
    result: { shape: 'lifted' },
    work: {
      type: 'each',
      run: Math.log,
      refuse: (x) => (x <= 0 ? 'only numbers above 0 have a logarithm' : undefined),
    },
    example: ['ln(exp(2))', '2'],
  },
  ...rounding('round', 'the nearest multiple of a step; halves away from zero', roundHalfAway, [
    'round(2.6 mm, step: 0.5 mm)',
    '2.5 mm',
  ]),
  ...rounding('ceil', 'the next multiple of a step upward', Math.ceil, [
    'ceil(2.1 mm, step: 0.5 mm)',
    '2.5 mm',
  ]),
  ...rounding('floor', 'the next multiple of a step downward', Math.floor, [
    'floor(2.9 mm, step: 0.5 mm)',
    '2.5 mm',
  ]),
];

function rounding(
  name: string,
  what: string,
  toWhole: (x: number) => number,
  example: readonly [string, string],
): FunctionDeclaration[] {
  return [
    {
      name,
      doc: `Rounds a quantity to ${what}.`,
      parameters: [ANY, STEP],
      result: { shape: 'lifted', dimension: 'a' },
      work: {
        type: 'each',
        run: (x, step) => toWhole(settle(x / step)) * step,
        refuse: (_, step) => (step > 0 ? undefined : 'the step must be above 0'),
      },
      example,
    },
  ];
}

/** Takes back what binary fractions add: 0.3 in/0.1 in is 3 steps, not 2.9999999999999996. */
function settle(steps: number): number {
  const whole = Math.round(steps);
  return Math.abs(steps - whole) <= 4 * Number.EPSILON * Math.abs(steps) ? whole : steps;
}

function roundHalfAway(x: number): number {
  return Math.sign(x) * Math.floor(Math.abs(x) + 0.5 + Math.abs(x) * Number.EPSILON);
}
