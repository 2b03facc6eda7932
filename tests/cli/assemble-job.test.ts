import { expect, test } from 'vitest';
import { parseArguments } from '../../src/cli/parse-arguments.ts';

test('both commands take a file', () => {
  expect(parseArguments(['job', 'check', 'a.json'])).toEqual({
    command: 'job-check',
    file: 'a.json',
    json: false,
  });
  expect(parseArguments(['job', 'report', 'a.json', '--html', '-'])).toEqual({
    command: 'job-report',
    file: 'a.json',
    html: '-',
  });
});

test.each([
  [['job'], 'job needs check or report after it'],
  [['job', 'chek', 'a'], 'job has no "chek"; did you mean check?'],
  [['job', 'print', 'a'], /job has no "print"/],
  [['job', 'check'], 'job check needs a job file'],
  [['job', 'check', 'a', 'b'], 'job check takes one job file; "b" is too many'],
  [['job', 'report', 'a'], 'job report needs --html FILE'],
  [['job', 'check', 'a', '--html', 'b'], /job check has no option --html/],
  [['job', 'report', 'a', '--html', 'b', '--json'], /job report has no option --json/],
])('%j is wrong use', (typed, sentence) => {
  const expected = typeof sentence === 'string' ? sentence : expect.stringMatching(sentence);
  expect(parseArguments(typed)).toEqual({ command: 'misuse', about: 'job', sentence: expected });
});
