import { describe, expect, test } from 'vitest';
import { readList } from '../../src/language/entry-list.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';
import { expectProblem, expectValue, field } from './made-entry.ts';

const RATIOS = field('', 'list');
const SHIMS = field('in', 'list');

describe('a list of plain numbers', () => {
  test.each([
    ['[2.95, 1.95, 1.35]', [2.95, 1.95, 1.35]],
    ['[2.95,1.95,1.35]', [2.95, 1.95, 1.35]],
    ['[2,95; 1,95]', [2.95, 1.95]],
    ['[2.95; 1.95]', [2.95, 1.95]],
    ['[1, 2]', [1, 2]],
    ['[1.5,250]', [1.5, 250]],
    [' [ 2.95 ] ', [2.95]],
    ['[(1 + 2) * 3, 4]', [9, 4]],
    ['[]', []],
    ['[ ]', []],
  ])('%s', (text, values) => {
    expect(Array.from(expectValue(text, RATIOS).value as Float64Array)).toEqual(values);
  });
});

describe('a list of lengths', () => {
  test.each([
    ['[0.010, 0.015]', false, 'in'],
    ['[0.010, 0.015] in', true, 'in'],
    ['[0.010 in, 0.015 in]', true, 'in'],
    ['[0.010", 0.015"]', true, 'in'],
    ['[0.010, 0.015]"', true, 'in'],
    ['[10, 15] thou', true, 'thou'],
    ['[0.254 mm, 0.015 in]', true, undefined],
  ])('%s', (text, explicit, unit) => {
    const reading = expectValue(text, SHIMS);
    const inches = Array.from(reading.value as Float64Array, (x) =>
      Number((x / 0.0254).toPrecision(9)),
    );
    expect(inches).toEqual([0.01, 0.015]);
    expect([reading.explicit, reading.unit?.symbol]).toEqual([explicit, unit]);
  });

  test('an empty one belongs in any field of lists', () => {
    expect(expectValue('[]', SHIMS).value).toHaveLength(0);
    expect(readList('[]', undefined)).toMatchObject({ dimension: [0, 0, 0, 0] });
    expect(readList('[]', parseUnit('in'))).toMatchObject({ dimension: [1, 0, 0, 0] });
  });
});

describe('a list is refused', () => {
  test.each([
    ['[2,95, 1,95]', 'ambiguous-number', 'is 2,95 one number or two?'],
    ['[2,95]', 'ambiguous-number', 'is 2,95 one number or two?'],
    ['[3,15]', 'ambiguous-number', 'is 3,15 one number or two?'],
    ['[1,234.5, 3]', 'ambiguous-number', 'is 1,234.5 one number or two?'],
    ['[10,150,0.5]', 'ambiguous-number', 'one number or two?'],
    ['[1,234; 2]', 'ambiguous-number', '1,234 can be read as 1234 or as 1.234'],
    ['[1, 2', 'unreadable-entry', 'the list lacks its closing bracket ]'],
    ['1, 2]', 'unreadable-entry', 'a list stands in square brackets, as in [0.010, 0.015] in'],
    ['3', 'unreadable-entry', 'a list stands in square brackets'],
    ['[1,,2]', 'unreadable-entry', 'a number is missing'],
    ['[1, 2,]', 'unreadable-entry', 'a number is missing'],
    ['[,]', 'unreadable-entry', 'a number is missing'],
    ['[[1]]', 'unreadable-entry', 'one list is enough'],
    ['[1] [2]', 'unreadable-entry', 'one list is enough'],
    ['[1 ± 0.1]', 'unreadable-entry', 'the numbers of a list take no tolerance'],
    ['[1] x', 'unreadable-entry', 'behind a list stands its unit and nothing else, not x'],
    [
      '[1] in rev',
      'unreadable-entry',
      'behind a list stands its unit and nothing else, not in rev',
    ],
    ['[a]', 'name-in-entry', '"a" is not a number or a unit'],
    ['[NaN]', 'name-in-entry', '"NaN"'],
    ['[1/0]', 'division-by-zero', 'division by zero'],
    ['[1e999]', 'malformed-number', 'too large'],
    ['[0.010, 0.4 mm]', 'mixed-units', '0.010 has no unit, but others in the list have'],
    ['[0.1 in] mm', 'mixed-units', 'the list has units inside and one behind it'],
    ['[0.1 in, 2 rpm]', 'mixed-units', 'cannot stand together'],
    [
      '[1, 2] rpm',
      'entry-dimension',
      '[1, 2] rpm is a turning speed; a length such as [3.2\u00A0in] belongs here',
    ],
  ])('%s', (text, code, part) => {
    const problem = expectProblem(text, SHIMS);
    expect(problem.message).toContain(part);
    expect(problem.code).toBe(code);
  });

  test('a list of a thousand brackets', () => {
    expect(expectProblem('['.repeat(1000), SHIMS).message).toBe(
      'the list lacks its closing bracket ]',
    );
  });
});
