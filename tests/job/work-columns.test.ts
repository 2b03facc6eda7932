import { expect, test } from 'vitest';
import { type Job, NEW_JOB, withEntry } from '../../src/job/record.ts';
import { withBase, withDifference, withVariant } from '../../src/job/variants.ts';
import { workColumns, workJob } from '../../src/job/work-columns.ts';
import { block, makeBook } from '../sheet/made-book.ts';

const { book, cell } = makeBook({
  '10-a.md': block('given', 'axle = 3.25 "Axle"') + block('work', 'double = 2 * axle'),
  '20-b.md': block('from 10-a', 'axle') + block('work', 'triple = 3 * axle'),
});

function numbers(job: Job, name: string): readonly number[] {
  const { index } = cell(name);
  return workColumns(book, job).map(({ frame }) => frame?.memory.numbers[index] ?? Number.NaN);
}

function short(text: string, given = 'axle', sheet = '10-a'): Job {
  return withDifference(withVariant(NEW_JOB, 'Short'), 'Short', sheet, given, text);
}

test('the job and its variants are worked, each on its own', () => {
  const job = withEntry(short('4'), '10-a', 'axle', { text: '3' });
  expect(numbers(job, '10-a/double')).toEqual([6, 8]);
  expect(workColumns(book, job).map(({ variant }) => variant)).toEqual([undefined, 'Short']);
});

test('a difference on one sheet arrives on those that carry the value', () => {
  expect(numbers(short('4'), '20-b/triple')).toEqual([9.75, 12]);
});

test('a difference may name the value where it is carried to', () => {
  expect(numbers(short('4', 'axle', '20-b'), '10-a/double')).toEqual([6.5, 8]);
});

test('a variant whose base is gone has no column, and the others have theirs', () => {
  const job = withVariant(withBase(short('4'), 'Short', 'gone'), 'Tall');
  expect(numbers(job, '10-a/double')).toEqual([6.5, Number.NaN, 6.5]);
  expect(workColumns(book, job)[1]!.faults[0]).toMatch(
    /builds on "gone", which is no longer there/,
  );
});

test.each([
  ['an entry that cannot be read', short('3,,'), /^Axle: /],
  [
    'a given that is not there',
    short('4', 'axel'),
    /^Sheet 10-a has no "axel"; did you mean axle\?$/,
  ],
  ['a result', short('4', 'double'), /works "double" out; only what is measured/],
  ['a sheet that is not there', short('4', 'x', '99-z'), /There is no sheet "99-z" here/],
])('%s is told', (_, job, words) => {
  const [own, column] = workColumns(book, job);
  expect(own!.faults).toEqual([]);
  expect(column!.faults).toEqual([expect.stringMatching(words)]);
});

test('a job without anything typed is the sheets’ own example', () => {
  const { frame, faults } = workJob(book, NEW_JOB);
  expect(frame.memory.numbers[cell('10-a/double').index]).toBe(6.5);
  expect(faults).toEqual([]);
});
