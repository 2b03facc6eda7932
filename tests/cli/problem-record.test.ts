import { expect, test } from 'vitest';
import { formatProblem, recordProblem, uniqueProblems } from '../../src/cli/problem-record.ts';
import { fail } from '../../src/language/problem.ts';

const PROBLEM = fail('division-by-zero', { from: 3, to: 4 }, { divisor: 'ratio is 0' });
const PLACE = { file: 'a.md', line: 2, column: 7 };

test('a problem without cell and place has empty texts for them', () => {
  expect(recordProblem(PROBLEM)).toEqual({
    code: 'division-by-zero',
    message: 'division by zero: ratio is 0',
    cell: '',
    place: '',
  });
});

test('a place is written as editors read it', () => {
  const record = recordProblem({ ...PROBLEM, place: PLACE, cell: 'out' });
  expect(record).toMatchObject({ cell: 'out', place: 'a.md:2:7' });
  expect(formatProblem(record)).toBe('a.md:2:7: division by zero: ratio is 0');
});

test('a problem without a place is known by its cell', () => {
  expect(formatProblem(recordProblem(PROBLEM, 'out'))).toBe('out: division by zero: ratio is 0');
  expect(formatProblem(recordProblem(PROBLEM))).toBe('division by zero: ratio is 0');
});

test('one fault of one place stands once, two places stand twice', () => {
  const first = recordProblem({ ...PROBLEM, place: PLACE }, 'a');
  const same = recordProblem({ ...PROBLEM, place: PLACE }, 'b');
  const other = recordProblem({ ...PROBLEM, place: { ...PLACE, line: 3 } }, 'c');
  expect(uniqueProblems([first, same, other])).toEqual([first, other]);
});
