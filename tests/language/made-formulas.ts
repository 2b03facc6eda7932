import fc from 'fast-check';

/** Formulas that make sense, as text: one arbitrary a kind. */
export interface Formulas {
  readonly plain: fc.Arbitrary<string>;
  readonly length: fc.Arbitrary<string>;
  readonly area: fc.Arbitrary<string>;
  readonly time: fc.Arbitrary<string>;
  readonly angle: fc.Arbitrary<string>;
  readonly truth: fc.Arbitrary<string>;
  readonly text: fc.Arbitrary<string>;
  readonly lengths: fc.Arbitrary<string>;
  readonly plains: fc.Arbitrary<string>;
  readonly texts: fc.Arbitrary<string>;
}

/** What the formulas call by name. `lost…` has an error, `blank…` was left empty. */
export const NAMES = {
  gap: '3 in',
  arm: '40 mm',
  none_left: '0 mm',
  blank_gap: 'blank in',
  lost_gap: 'lost in',
  laps: '2.5',
  no_laps: '0',
  stroke: '3 s',
  ratios: '[3, 2, 1]',
  shims: '[1, 2, 3] mm',
  few_shims: '[1, 2] mm',
  no_shims: '[] mm',
  lost_shims: 'lost in list',
  name: '"Heavy"',
  blank_name: 'blank text',
  gears: '["1st", "2nd", "3rd"]',
  spring: '{name: "Heavy", length: 80 mm, sizes: [1, 2, 3]}',
  springs: '[{name: "Heavy", length: 80 mm}, {name: "Light", length: 60 mm}]',
} as const;

/** Makes the arbitraries; nested formulas stand in brackets, so that each means what it says. */
export function anyFormulas(): Formulas {
  return fc.letrec<{ [K in keyof Formulas]: string }>((tie) => {
    const join = (left: keyof Formulas, sign: string, right: keyof Formulas) =>
      fc.tuple(tie(left), tie(right)).map(([a, b]) => `(${a}) ${sign} (${b})`);
    const call = (name: string, ...parts: readonly (keyof Formulas)[]) =>
      fc.tuple(...parts.map((part) => tie(part))).map((given) => `${name}(${given.join(', ')})`);
    const choice = (kind: keyof Formulas) =>
      fc
        .tuple(tie('truth'), tie(kind), tie(kind))
        .map(([asks, then, other]) => `if ${asks} then ${then} else (${other})`);
    const minus = (kind: keyof Formulas) => tie(kind).map((inner) => `-(${inner})`);
    const one = (...written: readonly string[]) => fc.constantFrom(...written);
    const of = (...parts: readonly fc.Arbitrary<string>[]) =>
      fc.oneof({ depthSize: 'small', withCrossShrink: true, maxDepth: 4 }, ...parts);
    return {
      plain: of(
        one('0', '1', '2.5', '3', '50 %', 'laps', 'no_laps', 'pi'),
        join('plain', '+', 'plain'),
        join('plain', '-', 'plain'),
        join('plain', '*', 'plain'),
        join('plain', '/', 'plain'),
        join('length', '/', 'length'),
        join('plain', '^', 'plain'),
        call('sqrt', 'plain'),
        call('round', 'plain'),
        call('count', 'lengths'),
        call('sum', 'plains'),
        call('item', 'plains', 'plain'),
        call('cos', 'angle'),
        choice('plain'),
        minus('plain'),
      ),
      length: of(
        one(
          '0 in',
          '1 in',
          '3 1/8 in',
          'gap',
          'arm',
          'none_left',
          'blank_gap',
          'lost_gap',
          'spring.length',
        ),
        join('length', '+', 'length'),
        join('length', '-', 'length'),
        join('length', '*', 'plain'),
        join('length', '/', 'plain'),
        join('area', '/', 'length'),
        call('sqrt', 'area'),
        call('abs', 'length'),
        call('max', 'length', 'lengths'),
        call('first', 'lengths'),
        call('round', 'length', 'length'),
        call('largest_up_to', 'lengths', 'length'),
        tie('length').map((fallback) => `blank_gap otherwise (${fallback})`),
        tie('length').map((fallback) => `(gap otherwise ${fallback})`),
        choice('length'),
        minus('length'),
      ),
      area: of(
        one('2 in^2'),
        join('length', '*', 'length'),
        tie('length').map((base) => `(${base})^2`),
        join('area', '+', 'area'),
      ),
      time: of(
        one('3 s', 'stroke', '1 min'),
        join('time', '*', 'plain'),
        join('time', '-', 'time'),
      ),
      angle: of(
        one('1 rev', '30 deg', '0 deg'),
        call('atan2', 'length', 'length'),
        join('angle', '*', 'plain'),
        call('atan', 'plain'),
      ),
      truth: of(
        one('true', 'false'),
        join('length', '<', 'length'),
        join('plain', '>=', 'plain'),
        join('time', '=', 'time'),
        join('text', '<>', 'text'),
        join('truth', 'and', 'truth'),
        join('truth', 'or', 'truth'),
        tie('truth').map((inner) => `not (${inner})`),
      ),
      text: of(
        one('"Heavy"', '"x"', 'name', 'blank_name', 'spring.name'),
        call('last', 'texts'),
        choice('text'),
      ),
      lengths: of(
        one('shims', 'few_shims', 'no_shims', 'lost_shims', 'springs.length', '[1 in, 2 in]'),
        fc
          .array(tie('length'), { minLength: 1, maxLength: 3 })
          .map((items) => `[${items.join(', ')}]`),
        join('lengths', '*', 'plain'),
        join('lengths', '+', 'length'),
        join('length', '-', 'lengths'),
        call('descending', 'lengths'),
        call('abs', 'lengths'),
        call('without_first', 'lengths'),
        choice('lengths'),
        minus('lengths'),
      ),
      plains: of(
        one('ratios', 'spring.sizes', '[]'),
        join('plain', '/', 'plains'),
        join('lengths', '/', 'length'),
        call('round', 'plains'),
      ),
      texts: of(
        one('gears', 'springs.name', '["a"]'),
        call('ordinals', 'lengths'),
        call('without_last', 'texts'),
      ),
    };
  });
}
