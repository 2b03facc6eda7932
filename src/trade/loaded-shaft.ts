import type { FunctionDeclaration } from '../language/functions/declaration.ts';
import type { QuantityList, Value } from '../language/kind.ts';
import { FORCE, LENGTH, TURNING_SPEED } from './dimensions.ts';

/** Standard acceleration of free fall, m/s². */
const GRAVITY = 9.806_65;

/** Where a light shaft with heavy things on it begins to whirl. */
export const LOADED_SHAFT_SPEED: FunctionDeclaration = {
  name: 'loaded_shaft_speed',
  doc: 'The turning speed at which a shaft without mass of its own, with loads sitting on it, begins to whirl: from the loads and how far the shaft is bent where each of them sits.',
  parameters: [
    { name: 'loads', shape: 'list', dimension: FORCE, doc: 'weights on the shaft' },
    {
      name: 'deflections',
      shape: 'list',
      dimension: LENGTH,
      doc: 'bending under each of them with all in place',
    },
  ],
  result: { shape: 'quantity', dimension: TURNING_SPEED },
  work: {
    type: 'whole',
    run: (loads, deflections) => rayleigh(loads as QuantityList, deflections as QuantityList),
    refuse: (loads, deflections) => refuse(loads as QuantityList, deflections as QuantityList),
  },
  example: ['loaded_shaft_speed([10 N], [9.80665 mm])', 'sqrt(1000) * 1 rad/s'],
  source:
    'from memory: Rayleigh’s rule, ω² = g ΣWy / ΣWy². The shaft’s own mass is not in it; spread along the shaft it does not count as if it all sat in the middle',
  validity: 'an even shaft on two supports; gives a little more than the true speed, never less',
  outside: (loads) =>
    (loads as QuantityList).length === 1
      ? 'one load stands for a light shaft with a heavy thing on it; a tube’s own mass lumped so whirls at 0.70 of the right speed'
      : undefined,
};

function rayleigh(loads: QuantityList, deflections: QuantityList): number {
  const sum = (power: number): number =>
    loads.reduce((total, load, i) => total + load * deflections[i]! ** power, 0);
  return Math.sqrt((GRAVITY * sum(1)) / sum(2));
}

function refuse(loads: QuantityList, deflections: QuantityList): string | undefined {
  if (loads.length !== deflections.length)
    return `${loads.length} loads do not go with ${deflections.length} deflections`;
  const isWhole = (values: Value): boolean => (values as QuantityList).every((value) => value > 0);
  return loads.length > 0 && isWhole(loads) && isWhole(deflections)
    ? undefined
    : 'there is at least one load, and loads and deflections are above 0';
}
