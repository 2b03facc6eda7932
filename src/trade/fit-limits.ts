import ansi from '../../shared/fits/ansi-b4-1.json' with { type: 'json' };
import iso from '../../shared/fits/iso-286.json' with { type: 'json' };
import type { FunctionDeclaration, Parameter } from '../language/functions/declaration.ts';
import { LENGTH } from './dimensions.ts';

const MICROMETRE = 1e-6;
const MILLIMETRE = 1e-3;
const INCH = 0.0254;
const THOU = 2.54e-5;

interface Range {
  readonly over: number;
  readonly to: number;
}

const SIZE: Parameter = {
  name: 'size',
  shape: 'quantity',
  dimension: LENGTH,
  doc: 'nominal size, the same for hole and shaft',
};

/** Limits of one tolerance zone of ISO 286. */
export const ISO_LIMITS: FunctionDeclaration = {
  name: 'iso_limits',
  doc: 'Least and greatest size of a hole (capital letter) or a shaft (small letter) in a tolerance zone of ISO 286, such as "H7" or "p6".',
  parameters: [SIZE, { name: 'zone', shape: 'text', doc: 'letter and grade, such as "H7"' }],
  result: { shape: 'list', dimension: LENGTH },
  work: {
    type: 'whole',
    run: (size, zone) =>
      place(size as number, findZone(size as number, zone as string)!, MICROMETRE),
    refuse: (size, zone) =>
      findZone(size as number, zone as string) === undefined
        ? `${zone} at ${show(size as number, MILLIMETRE)} mm is not in the table here; the standard has it`
        : undefined,
  },
  example: ['iso_limits(50 mm, "H7")', '[50 mm, 50.025 mm]'],
  source: iso.source,
  validity:
    'sizes over 10 to 18 mm and over 30 to 50 mm; at 20 °C; what the bench measures is not as fine',
};

/** Limits of hole and shaft of one fit of ANSI/ASME B4.1. */
export const ANSI_LIMITS: FunctionDeclaration = {
  name: 'ansi_limits',
  doc: 'Least and greatest size of the hole, then least and greatest of the shaft, for a fit of ANSI/ASME B4.1: RC3, RC4 (running), LN2, LN3 (locational interference) or FN2 (drive).',
  parameters: [SIZE, { name: 'fit', shape: 'text', doc: 'class of fit, such as "RC4"' }],
  result: { shape: 'list', dimension: LENGTH },
  work: {
    type: 'whole',
    run: (size, fit) => placeFit(size as number, fit as string),
    refuse: (size, fit) =>
      findFit(size as number, fit as string) === undefined
        ? `${fit} at ${show(size as number, INCH)} in is not in the table here; the standard has it`
        : undefined,
  },
  example: ['ansi_limits(0.750 in, "RC4")', '[0.7500 in, 0.7512 in, 0.7484 in, 0.7492 in]'],
  source: ansi.source,
  validity: 'sizes over 0.40 to 1.19 in (FN2: to 0.56, and over 0.71); at 68 °F',
};

function findZone(size: number, zone: string): readonly number[] | undefined {
  const zones: Readonly<Record<string, readonly number[]>> =
    iso.ranges.find((range) => holds(range, size / MILLIMETRE))?.zones ?? {};
  return Object.hasOwn(zones, zone) ? zones[zone] : undefined;
}

function findFit(size: number, fit: string) {
  const classes: Readonly<Record<string, typeof ansi.classes.RC3>> = ansi.classes;
  if (!Object.hasOwn(classes, fit)) return undefined;
  return classes[fit]!.find((range) => holds(range, size / INCH));
}

/** Sizes in metres are not exact: one that stands on an upper end belongs below it. */
function holds({ over, to }: Range, size: number): boolean {
  const slack = 1e-9 * size;
  return size > over + slack && size <= to + slack;
}

function placeFit(size: number, fit: string): Float64Array {
  const { hole, shaft } = findFit(size, fit)!;
  return Float64Array.of(...place(size, hole, THOU), ...place(size, shaft, THOU));
}

/** From upper and lower deviation to least and greatest size. */
function place(size: number, [upper, lower]: readonly number[], unit: number): Float64Array {
  return Float64Array.of(size + lower! * unit, size + upper! * unit);
}

function show(size: number, unit: number): number {
  return Number((size / unit).toPrecision(4));
}
