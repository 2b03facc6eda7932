import type { FunctionDeclaration, Parameter } from '../language/functions/declaration.ts';
import { LENGTH, PRESSURE } from './dimensions.ts';

/** Share of its diameter by which a bore may close before the metal has yielded: the usual proof strain. From memory. */
const PROOF = 0.002;
const STEEL_POISSON = 0.29;
const BRONZE_POISSON = 0.33;

const SOURCE =
  "published: Lamé's thick cylinders, as in the tutorial on press and shrink fits to Shigley's Mechanical Engineering Design (Budynas & Nisbett), second-hand";
const VALIDITY =
  'round bush and round bore, both elastic, bush supported over its whole length; a crank flange is not a ring, and a bush that yields or is shaved going in closes less';

const PARAMETERS: readonly Parameter[] = [
  {
    name: 'interference',
    shape: 'either',
    dimension: LENGTH,
    doc: 'diameter of the bush less that of the bore it goes into, both free',
  },
  { name: 'fit', shape: 'either', dimension: LENGTH, doc: 'diameter where the two meet' },
  { name: 'bore', shape: 'either', dimension: LENGTH, doc: 'bore of the bush, free' },
  {
    name: 'housing',
    shape: 'either',
    dimension: LENGTH,
    doc: 'outer diameter of the metal around the bush',
  },
  {
    name: 'bush_modulus',
    shape: 'either',
    dimension: PRESSURE,
    doc: "Young's modulus of the bush",
  },
  {
    name: 'housing_modulus',
    shape: 'either',
    dimension: PRESSURE,
    doc: "Young's modulus of the metal around it",
  },
  {
    name: 'bush_poisson',
    shape: 'either',
    fallback: BRONZE_POISSON,
    doc: "Poisson's ratio of the bush; 0.33, bronze, when left out",
  },
  {
    name: 'housing_poisson',
    shape: 'either',
    fallback: STEEL_POISSON,
    doc: "Poisson's ratio of the metal around it; 0.29, steel, when left out",
  },
];

/** Pressure between a bush and what it is pressed into. */
export const PRESS_FIT_PRESSURE: FunctionDeclaration = {
  name: 'press_fit_pressure',
  doc: 'Pressure between a bush and the bore that it is pressed into.',
  parameters: PARAMETERS,
  result: { shape: 'lifted', dimension: PRESSURE },
  work: {
    type: 'each',
    run: (...values) => pressure(values),
    refuse: (...values) => refuse(values),
  },
  example: [
    'press_fit_pressure(0.1 mm, 100 mm, 0 mm, 150 mm, 210 GPa, 210 GPa, 0.3, 0.3)',
    '175/3 MPa',
  ],
  source: SOURCE,
  validity: VALIDITY,
};

/** How much the bore of a bush closes. */
export const BORE_CLOSING: FunctionDeclaration = {
  name: 'bore_closing',
  doc: 'How much smaller the bore of a bush becomes when the bush is pressed in.',
  parameters: PARAMETERS,
  result: { shape: 'lifted', dimension: LENGTH },
  work: {
    type: 'each',
    run: (...values) => closing(values),
    refuse: (...values) => refuse(values),
  },
  example: ['bore_closing(0.03 mm, 20 mm, 10 mm, 40 mm, 200 GPa, 200 GPa, 0.3, 0.3)', '0.012 mm'],
  source: SOURCE,
  validity: VALIDITY,
  outside: (...values) => outside(values as number[]),
};

/** Change of diameter of each part for each unit of pressure and diameter, added up. */
function pressure(values: readonly number[]): number {
  const [interference, fit, bore, housing, bushE, housingE, bushV, housingV] = values;
  const around = ring(housing!, fit!) + housingV!;
  const within = ring(fit!, bore!) - bushV!;
  return interference! / (fit! * (around / housingE! + within / bushE!));
}

/** (outer² + inner²)/(outer² − inner²): 1 for a solid bar, endless for a skin. */
function ring(outer: number, inner: number): number {
  return (outer ** 2 + inner ** 2) / (outer ** 2 - inner ** 2);
}

function closing(values: readonly number[]): number {
  const [, fit, bore, , bushModulus] = values;
  return (pressure(values) * 2 * fit! ** 2 * bore!) / (bushModulus! * (fit! ** 2 - bore! ** 2));
}

function refuse(values: readonly number[]): string | undefined {
  const [, fit, bore, housing, bushModulus, housingModulus] = values;
  if (!(bore! >= 0 && bore! < fit!)) return 'the bore of a bush is smaller than its outside';
  if (!(housing! > fit!)) return 'there is metal around the bush';
  return bushModulus! > 0 && housingModulus! > 0 ? undefined : "a Young's modulus is above 0";
}

function outside(values: readonly number[]): string | undefined {
  if (values.some((value) => typeof value !== 'number') || refuse(values) !== undefined)
    return undefined;
  if (values[0]! < 0) return 'the bush is smaller than the bore that it goes into: nothing presses';
  return closing(values) > PROOF * values[2]!
    ? 'the bore closes by more than 0.2 % of itself: the bush has yielded and closes by what it likes, so measure it in place'
    : undefined;
}
