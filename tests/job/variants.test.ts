import fc from 'fast-check';
import { expect, test } from 'vitest';
import { entryIn, type Job, NEW_JOB, withEntry } from '../../src/job/record.ts';
import {
  adoptVariant,
  differenceIn,
  findVariant,
  freshName,
  listBases,
  listDifferences,
  resolveVariant,
  withBase,
  withDifference,
  withoutVariant,
  withVariant,
  withVariantNamed,
} from '../../src/job/variants.ts';

const SHEET = '20-gearing';

/** A job with axle 3.25; "Short" has 3.73; "Short, wide tyre" builds on it. */
function makeJob(): Job {
  const job = withEntry(NEW_JOB, SHEET, 'axle_ratio', { text: '3.25' });
  const short = withDifference(withVariant(job, 'Short'), 'Short', SHEET, 'axle_ratio', '3.73');
  const wide = withVariant(short, 'Short, wide tyre', 'Short');
  return withDifference(wide, 'Short, wide tyre', SHEET, 'tyre_section', '225 mm');
}

function entriesWith(job: Job, name: string): readonly (string | undefined)[] {
  const resolved = resolveVariant(job, name);
  if (resolved.state === 'broken') throw new Error(resolved.sentence);
  return ['axle_ratio', 'tyre_section'].map((given) => entryIn(resolved.job, SHEET, given)?.text);
}

test('a variant is the job with its own differences', () => {
  expect(entriesWith(makeJob(), 'Short')).toEqual(['3.73', undefined]);
});

test('a variant built on another has the differences of both', () => {
  expect(entriesWith(makeJob(), 'Short, wide tyre')).toEqual(['3.73', '225 mm']);
});

test('of two differences in one given the nearer one counts', () => {
  const job = withDifference(makeJob(), 'Short, wide tyre', SHEET, 'axle_ratio', '3.9');
  expect(entriesWith(job, 'Short, wide tyre')).toEqual(['3.9', '225 mm']);
  expect(entriesWith(job, 'Short')).toEqual(['3.73', undefined]);
});

test('a difference may be taken back', () => {
  const job = withDifference(makeJob(), 'Short', SHEET, 'axle_ratio', undefined);
  expect(findVariant(job, 'Short')!.entries).toEqual({});
  expect(entriesWith(job, 'Short')).toEqual(['3.25', undefined]);
});

test('an empty difference leaves the given blank', () => {
  const job = withDifference(makeJob(), 'Short', SHEET, 'axle_ratio', '');
  expect(differenceIn(findVariant(job, 'Short')!, SHEET, 'axle_ratio')).toBe('');
  expect(entriesWith(job, 'Short')).toEqual(['', undefined]);
});

test('what follows a change of the job is the job, but for the differences', () => {
  const job = withEntry(makeJob(), SHEET, 'tyre_section', { text: '195 mm' });
  expect(entriesWith(job, 'Short')).toEqual(['3.73', '195 mm']);
});

test('removing a variant leaves those that build on it as they were', () => {
  const job = withoutVariant(makeJob(), 'Short');
  expect(job.variants).toHaveLength(1);
  expect(job.variants[0]!.base).toBeUndefined();
  expect(entriesWith(job, 'Short, wide tyre')).toEqual(['3.73', '225 mm']);
  expect(withoutVariant(job, 'no such')).toBe(job);
});

test('a base that is no longer there is told', () => {
  const job: Job = { ...makeJob(), variants: makeJob().variants.slice(1) };
  expect(resolveVariant(job, 'Short, wide tyre')).toEqual({
    state: 'broken',
    sentence:
      '"Short, wide tyre" builds on "Short", which is no longer there: build it on the job or on another proposal.',
  });
  expect(adoptVariant(job, 'Short, wide tyre').state).toBe('broken');
  expect(entriesWith(withBase(job, 'Short, wide tyre', undefined), 'Short, wide tyre')).toEqual([
    '3.25',
    '225 mm',
  ]);
});

test('a circle of variants is told', () => {
  const job = withBase(makeJob(), 'Short', 'Short, wide tyre');
  expect(resolveVariant(job, 'Short')).toMatchObject({
    state: 'broken',
    sentence: expect.stringMatching(/in a circle: Short, Short, wide tyre, Short/),
  });
  const own = withBase(makeJob(), 'Short', 'Short');
  expect(resolveVariant(own, 'Short').state).toBe('broken');
});

test('only what makes no circle can be a base', () => {
  const job = withVariant(makeJob(), 'Tall');
  expect(listBases(job, 'Short')).toEqual(['Tall']);
  expect(listBases(job, 'Short, wide tyre')).toEqual(['Short', 'Tall']);
});

test('a name that is not there is told', () => {
  expect(resolveVariant(NEW_JOB, 'Short')).toMatchObject({
    sentence: 'There is no proposal "Short" in this job.',
  });
});

test('names are made unlike each other', () => {
  expect(freshName(makeJob(), ' Short ')).toBe('Short 2');
  expect(freshName(NEW_JOB, '  ')).toBe('Proposal');
});

test('a variant called otherwise is followed by those that build on it', () => {
  const job = withVariantNamed(makeJob(), 'Short', '3.73 axle');
  expect(job.variants.map(({ name, base }) => [name, base])).toEqual([
    ['3.73 axle', undefined],
    ['Short, wide tyre', '3.73 axle'],
  ]);
  expect(withVariantNamed(makeJob(), 'Short', 'Short').variants[0]!.name).toBe('Short');
});

test('made the job’s, a variant is gone and what it had stands in the job', () => {
  const adopted = adoptVariant(makeJob(), 'Short');
  if (adopted.state === 'broken') throw new Error(adopted.sentence);
  expect(entryIn(adopted.job, SHEET, 'axle_ratio')).toEqual({ text: '3.73' });
  expect(adopted.job.variants.map(({ name, base }) => [name, base])).toEqual([
    ['Short, wide tyre', undefined],
  ]);
  expect(entriesWith(adopted.job, 'Short, wide tyre')).toEqual(['3.73', '225 mm']);
});

test('made the job’s, a variant leaves the one that it builds on', () => {
  const adopted = adoptVariant(makeJob(), 'Short, wide tyre');
  if (adopted.state === 'broken') throw new Error(adopted.sentence);
  expect(adopted.job.variants.map(({ name }) => name)).toEqual(['Short']);
});

test('whatever is different, resolving leaves all other entries as they are', () => {
  const texts = fc.dictionary(fc.stringMatching(/^[a-z]{1,3}$/), fc.string());
  fc.assert(
    fc.property(texts, texts, (entered, different) => {
      const typed = Object.entries(entered).reduce<Job>(
        (job, [given, text]) => withEntry(job, SHEET, given, { text }),
        NEW_JOB,
      );
      const job = Object.entries(different).reduce<Job>(
        (before, [given, text]) => withDifference(before, 'V', SHEET, given, text),
        withVariant(typed, 'V'),
      );
      const resolved = resolveVariant(job, 'V');
      if (resolved.state === 'broken') throw new Error(resolved.sentence);
      for (const given of new Set([...Object.keys(entered), ...Object.keys(different)])) {
        const wanted = different[given] ?? entered[given];
        expect(entryIn(resolved.job, SHEET, given)?.text).toBe(wanted);
      }
      expect(listDifferences(job.variants[0]!.entries)).toHaveLength(Object.keys(different).length);
    }),
  );
});
