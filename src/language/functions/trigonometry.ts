import type { Dimension } from '../../units/dimension.ts';
import { type FunctionDeclaration, never } from './declaration.ts';

const ANGLE: Dimension = [0, 0, 0, 1];
const RIGHT_ANGLE = Math.PI / 2;

const angle = { name: 'angle', shape: 'either', dimension: ANGLE, doc: 'an angle' } as const;
const ratio = { name: 'ratio', shape: 'either', doc: 'a plain number' } as const;

export const TRIGONOMETRY: readonly FunctionDeclaration[] = [
  ofAngle('sin', 'Sine of an angle.', Math.sin, ['sin(30 deg)', '0.5']),
  ofAngle('cos', 'Cosine of an angle.', Math.cos, ['cos(60 deg)', '0.5']),
  {
    ...ofAngle('tan', 'Tangent of an angle.', Math.tan, ['tan(45 deg)', '1']),
    work: {
      type: 'each',
      run: (x) => (isUpright(x) ? Number.NaN : Math.tan(x)),
      refuse: (x) => (isUpright(x) ? 'a right angle has no tangent' : undefined),
    },
  },
  toAngle('asin', 'Angle with this sine.', Math.asin, ['asin(0.5)', '30 deg']),
  toAngle('acos', 'Angle with this cosine.', Math.acos, ['acos(0.5)', '60 deg']),
  {
    name: 'atan',
    doc: 'Angle with this tangent: rise over run.',
    parameters: [ratio],
    result: { shape: 'lifted', dimension: ANGLE },
    work: { type: 'each', run: Math.atan, refuse: never },
    example: ['atan(1)', '45 deg'],
  },
  {
    name: 'atan2',
    doc: 'Direction of a point, from its height and its distance along.',
    parameters: [
      { name: 'rise', shape: 'either', dimension: 'a', doc: 'how far up' },
      { name: 'run', shape: 'either', dimension: 'a', doc: 'how far along' },
    ],
    result: { shape: 'lifted', dimension: ANGLE },
    work: { type: 'each', run: Math.atan2, refuse: never },
    example: ['atan2(1 in, -1 in)', '135 deg'],
  },
];

function isUpright(x: number): boolean {
  return Math.abs(Math.cos(x)) < 1e-15 * Math.max(1, Math.abs(x) / RIGHT_ANGLE);
}

function ofAngle(
  name: string,
  doc: string,
  run: (x: number) => number,
  example: readonly [string, string],
): FunctionDeclaration {
  const work = { type: 'each', run, refuse: never } as const;
  return { name, doc, parameters: [angle], result: { shape: 'lifted' }, work, example };
}

function toAngle(
  name: string,
  doc: string,
  run: (x: number) => number,
  example: readonly [string, string],
): FunctionDeclaration {
  const refuse = (x: number) =>
    Math.abs(x) > 1 ? `${name} needs a number from -1 to 1` : undefined;
  return {
    name,
    doc,
    parameters: [ratio],
    result: { shape: 'lifted', dimension: ANGLE },
    work: { type: 'each', run, refuse },
    example,
  };
}
