import { describe, expect, test } from 'vitest';
import { BUILTINS } from '../../../src/language/functions/builtins.ts';
import {
  type FunctionDeclaration,
  type Letter,
  never,
} from '../../../src/language/functions/declaration.ts';
import { TRADE } from '../../../src/trade/trade-functions.ts';

const isLetter = (dimension: unknown): dimension is Letter => typeof dimension === 'string';

/** Letters that the result needs, and those that some parameter gives them. */
function lettersOf({ parameters, result }: FunctionDeclaration) {
  const bound = parameters.flatMap(({ dimension }) => (isLetter(dimension) ? [dimension] : []));
  return { bound, needed: isLetter(result.dimension) ? [result.dimension] : [] };
}

describe.each([...BUILTINS, ...TRADE].map((each) => [each.name, each] as const))(
  'the declaration of %s',
  (name, declaration) => {
    const { parameters, doc, example, result, work } = declaration;

    test('has names as sheets may write them, no two alike', () => {
      const names = [name, ...parameters.map((parameter) => parameter.name)];
      expect(names.filter((each) => !/^[a-z][a-z0-9_]*$/.test(each))).toEqual([]);
      expect(new Set(names).size).toBe(names.length);
    });

    test('says in a sentence what it gives, and of each parameter what it is', () => {
      expect(doc).toMatch(/^(?:[A-Z]|e ).*[.…]$/s);
      expect(parameters.filter((parameter) => parameter.doc.trim() === '')).toEqual([]);
      expect(example[0]).toContain(`${name}(`);
    });

    test('takes first what must be given, then what may be left out', () => {
      const optional = parameters.map(({ fallback }) => fallback !== undefined);
      expect(optional).toEqual(optional.toSorted());
    });

    test('tells the dimension of its result from what is given', () => {
      const { bound, needed } = lettersOf(declaration);
      expect(needed.filter((letter) => !bound.includes(letter))).toEqual([]);
      if (result.shape === 'lifted') {
        expect(parameters.some(({ shape }) => shape === 'either')).toBe(true);
      }
      if (result.shape === 'element' || result.shape === 'sequence') {
        expect(parameters[0]!.shape).toBe('sequence');
      }
    });

    test('is worked number by number only where numbers go in', () => {
      const shapes = new Set(parameters.map(({ shape }) => shape));
      const numbers = [...shapes].every((shape) => shape === 'quantity' || shape === 'either');
      expect(work.type === 'whole' || numbers).toBe(true);
    });
  },
);

test('what has a value everywhere refuses nothing', () => {
  expect(never()).toBeUndefined();
});
