import { expect, test } from 'vitest';
import { parseVulgarFraction } from '../../src/units/vulgar-fraction.ts';

test.each(Array.from('½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒'))('%s is what Unicode says it is', (sign) => {
  const [above, below] = parseVulgarFraction(sign)!.split('/');
  expect(sign.normalize('NFKC')).toBe(`${above}\u2044${below}`);
});

test.each(['1', '²', 'x', '', undefined, 'constructor', '↉'])('%j is no fraction', (character) => {
  expect(parseVulgarFraction(character)).toBeUndefined();
});
