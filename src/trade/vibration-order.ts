import type { FunctionDeclaration } from '../language/functions/declaration.ts';
import type { QuantityList } from '../language/kind.ts';
import { TURNING_SPEED } from './dimensions.ts';

/** Nearest first: what may have been felt. */
export const LIKELY_SOURCES: FunctionDeclaration = {
  name: 'likely_sources',
  doc: 'Which of several turning things could make a vibration that was felt: the names of those whose own rate lies within a share of it, nearest first.',
  parameters: [
    { name: 'names', shape: 'sequence', doc: 'what turns, in words' },
    { name: 'rates', shape: 'list', dimension: TURNING_SPEED, doc: 'how often each of it shakes' },
    {
      name: 'felt',
      shape: 'quantity',
      dimension: TURNING_SPEED,
      doc: 'how often the car was felt to shake',
    },
    {
      name: 'within',
      shape: 'quantity',
      doc: 'how far off it may be, as a share of what was felt',
    },
  ],
  result: { shape: 'texts' },
  work: {
    type: 'whole',
    run: (names, rates, felt, within) =>
      nameNear(names as readonly string[], rates as QuantityList, felt as number, within as number),
    refuse: (names, rates, felt) => refuse(names, rates as QuantityList, felt as number),
  },
  example: [
    'likely_sources(["tyre", "shaft", "engine"], [15 rev/s, 52 rev/s, 49 rev/s], 50 rev/s, within: 5 %)',
    '["engine", "shaft"]',
  ],
  source: 'derived: rates compared one by one',
  validity:
    'a steady speed, and a rate read to a few per cent; two things at one rate cannot be told apart without a second speed or gear',
};

function nameNear(
  names: readonly string[],
  rates: QuantityList,
  felt: number,
  within: number,
): readonly string[] {
  const off = (place: number): number => Math.abs(rates[place]! / felt - 1);
  const places = names.map((_, place) => place).filter((place) => off(place) <= within);
  return places.sort((a, b) => off(a) - off(b)).map((place) => names[place]!);
}

function refuse(names: unknown, rates: QuantityList, felt: number): string | undefined {
  if (!Array.isArray(names)) return 'the names are words';
  if (names.length !== rates.length)
    return `${names.length} names do not go with ${rates.length} rates`;
  return felt > 0 ? undefined : 'a vibration that is felt has a rate above 0';
}
