import { expect, test } from 'vitest';
import { signWords } from '../../src/sheet/sign-words.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';

const SIGNS = { positive: 'Out.', negative: 'In.', zero: 'Leave it.' };
const inch = parseUnit('in')!;
const thou = { unit: inch, resolution: 0.001 };

test.each([
  ['above nothing', 1, {}, 'Out.'],
  ['below nothing', -1, {}, 'In.'],
  ['nothing', 0, {}, 'Leave it.'],
  ['nothing from below', -0, {}, 'Leave it.'],
  ['hardly anything, and nothing said of digits', 1e-12, {}, 'Out.'],
  ['half of the last digit', 0.0005 * 0.0254, thou, 'Out.'],
  ['less than half of the last digit', 0.00049 * 0.0254, thou, 'Leave it.'],
  ['less than half of it below nothing', -0.00049 * 0.0254, thou, 'Leave it.'],
  ['less than half of the fraction', 0.007 * 0.0254, { unit: inch, fraction: 64 }, 'Leave it.'],
  ['half of the fraction', 0.0079 * 0.0254, { unit: inch, fraction: 64 }, 'Out.'],
])('%s is told as %s', (_, value, display, words) => {
  expect(signWords(SIGNS, value, display)).toBe(words);
});

test('a sign that the sheet says nothing of is not told', () => {
  expect(signWords({ negative: 'In.' }, 1, {})).toBeUndefined();
  expect(signWords({}, 0, {})).toBeUndefined();
});
