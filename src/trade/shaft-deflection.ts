import type { FunctionDeclaration } from '../language/functions/declaration.ts';
import { FORCE, LENGTH, PRESSURE, SECOND_MOMENT } from './dimensions.ts';

/** How far one load bends a shaft at one place. */
export const SHAFT_DEFLECTION: FunctionDeclaration = {
  name: 'shaft_deflection',
  doc: 'How far a shaft on two supports is bent at a place by one load at the same or another place. Several loads add up.',
  parameters: [
    { name: 'load', shape: 'either', dimension: FORCE, doc: 'weight of what sits on the shaft' },
    {
      name: 'at',
      shape: 'either',
      dimension: LENGTH,
      doc: 'where it sits, from the front support',
    },
    {
      name: 'place',
      shape: 'either',
      dimension: LENGTH,
      doc: 'where the bending is wanted, from the front support',
    },
    { name: 'length', shape: 'either', dimension: LENGTH, doc: 'from support to support' },
    { name: 'modulus', shape: 'either', dimension: PRESSURE, doc: 'modulus of elasticity' },
    {
      name: 'second_moment',
      shape: 'either',
      dimension: SECOND_MOMENT,
      doc: 'second moment of area against bending: of a round tube half of that against twisting',
    },
  ],
  result: { shape: 'lifted', dimension: LENGTH },
  work: { type: 'each', run: deflection, refuse },
  example: [
    'shaft_deflection(48 N, at: 1 m, place: 1 m, length: 2 m, modulus: 1 GPa, second_moment: 8 cm^4)',
    '100 mm',
  ],
  source:
    'published: Ugural, hollow-shaft example (second-hand, title not confirmed), has the same for two loads; Euler and Bernoulli’s beam',
  validity: 'small bending of an even shaft, supports that let its ends tilt; shear left out',
};

/** Maxwell: the bending at one place by a load at another is the same the other way round. */
function deflection(
  load: number,
  at: number,
  place: number,
  length: number,
  modulus: number,
  secondMoment: number,
): number {
  const near = Math.min(at, place);
  const far = length - Math.max(at, place);
  const bend = near * far * (length ** 2 - near ** 2 - far ** 2);
  return (load * bend) / (6 * length * modulus * secondMoment);
}

function refuse(...[, at, place, length, modulus, secondMoment]: number[]): string | undefined {
  if (!(length! > 0)) return 'a shaft is longer than 0';
  if (!(modulus! > 0 && secondMoment! > 0)) return 'modulus and second moment are above 0';
  const isOn = (spot: number): boolean => spot >= 0 && spot <= length!;
  return isOn(at!) && isOn(place!) ? undefined : 'load and place lie between the supports';
}
