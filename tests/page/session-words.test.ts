import { expect, test } from 'vitest';
import { describeIssues } from '../../src/page/session-words.ts';

const issue = (name: string) => ({ path: ['entries', name], message: 'cannot be read' });

test('where nothing is amiss nothing is said', () => {
  expect(describeIssues([])).toEqual([]);
});

test('what is amiss is one sentence, and a long list is counted', () => {
  expect(describeIssues([issue('a'), issue('b')])).toEqual([
    'Of this job not everything could be read, or can be trusted. entries, a: cannot be read; entries, b: cannot be read.',
  ]);
  const many = Array.from({ length: 20 }, (_, i) => issue(String(i)));
  expect(describeIssues(many)[0]).toMatch(/; and 12 more\.$/);
});
