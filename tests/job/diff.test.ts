import fc from 'fast-check';
import { expect, test } from 'vitest';
import { applyChanges, diffJobs } from '../../src/job/diff.ts';
import { NEW_JOB, withEntry, withNote } from '../../src/job/record.ts';
import { anyJob } from './made-job.ts';

test('two jobs that are the same have nothing different', () => {
  expect(diffJobs(NEW_JOB, { ...NEW_JOB, entries: {} })).toEqual([]);
});

test('what differs is told value by value', () => {
  const before = withEntry(NEW_JOB, 's', 'a', { text: '1', unit: 'in' });
  const after = withNote(withEntry(before, 's', 'a', { text: '2', unit: 'in' }), 's', 'b', 'x');
  expect(diffJobs(before, after)).toEqual([
    { path: ['entries', 's', 'a', 'text'], before: '1', after: '2' },
    { path: ['notes', 's'], after: { b: 'x' } },
  ]);
});

test('changes lead from any job to any other and back', () => {
  fc.assert(
    fc.property(anyJob, anyJob, (before, after) => {
      const changes = diffJobs(before, after);
      expect(applyChanges(before, changes, 'after')).toEqual(after);
      expect(applyChanges(after, changes, 'before')).toEqual(before);
    }),
  );
});

test('what is not touched is shared', () => {
  const before = withNote(NEW_JOB, 's', 'b', 'x');
  const after = withEntry(before, 's', 'a', { text: '1' });
  expect(applyChanges(before, diffJobs(before, after), 'after').notes).toBe(before.notes);
});
