import { expect, test } from 'vitest';
import { isProblem } from '../../src/language/entry-number.ts';
import { splitTolerance } from '../../src/language/entry-tolerance.ts';

function parts(entry: string): readonly string[] | undefined {
  const split = splitTolerance(entry);
  if (split === undefined || isProblem(split)) return undefined;
  const { nominal, minus, plus } = split;
  return [nominal, minus, plus].map(({ from, to }) => entry.slice(from, to).trim());
}

test.each([
  ['3.212 ± 0.003 in', ['3.212', '0.003 in', '0.003 in']],
  ['3.212±0.003', ['3.212', '0.003', '0.003']],
  ['3.212 +- 0.003', ['3.212', '0.003', '0.003']],
  ['3.212 +/- 0.003', ['3.212', '0.003', '0.003']],
  ['3.212 +/− 0.003', ['3.212', '0.003', '0.003']],
  ['3.212 + / - 0.003', ['3.212', '0.003', '0.003']],
  ['3.212 +0.05/-0.02 in', ['3.212', '0.02 in', '0.05']],
  ['3.212 -0.02/+0.05', ['3.212', '0.02', '0.05']],
  ['3.212-0.02/+0.05', ['3.212', '0.02', '0.05']],
  ['3 in +1/32/-1/64 in', ['3 in', '1/64 in', '1/32']],
  ['3 +1e-5/-2e-5', ['3', '2e-5', '1e-5']],
  ['300 +5 lb-ft/-3 lb-ft', ['300', '3 lb-ft', '5 lb-ft']],
  ['1; 2; 3 ± 1', ['1; 2; 3', '1', '1']],
  ['6 +4/-2', ['6', '2', '4']],
])('%s is a reading with its tolerance', (entry, expected) => {
  expect(parts(entry)).toEqual(expected);
});

test.each(['3', '3 - 2', '3 + -2', '3 - 4/-2', '6/-2', '-6/-2', '3-1/8', '3 + 4/2', 'x', ''])(
  '%j has no tolerance',
  (entry) => {
    expect(splitTolerance(entry)).toBeUndefined();
  },
);

test.each([
  ['3 ±', 'a number belongs behind ±, as in 3.212 ± 0.003 in'],
  ['± 3', 'a reading belongs before its tolerance, as in 3.212 ± 0.003 in'],
  ['+5/-3', 'a reading belongs before its tolerance, as in 3.212 ± 0.003 in'],
  ['3 ± 1 ± 2', 'one tolerance is enough, as in 3.212 ± 0.003 in'],
  ['3 ± 1; 4 ± 1', 'one tolerance is enough, as in 3.212 ± 0.003 in'],
])('%s is refused', (entry, message) => {
  expect(splitTolerance(entry)).toMatchObject({ code: 'bad-tolerance', message });
});

test.each([
  ['3.212 +0.05 -0.02', '+0.05', '-0.02'],
  ['3.212 +.05 −.02 in', '+.05', '−.02'],
  ['3 1/8 in  -1/64  +1/32"', '-1/64', '+1/32"'],
])('%s could be a tolerance or a sum, and is asked about', (entry, first, second) => {
  expect(splitTolerance(entry)).toMatchObject({
    code: 'bad-tolerance',
    message: `is ${first} ${second} a tolerance or a sum? write ${first}/${second} for a tolerance, and a blank behind each sign for a sum`,
  });
});

test.each(['3 + 2 - 1', '3 +2', '3 -2', '3 +2 +1', '3 -2 -1', '3+2-1', '+2 -1', '3 +2 -1 * 4'])(
  '%s is a sum',
  (entry) => {
    expect(splitTolerance(entry)).toBeUndefined();
  },
);
