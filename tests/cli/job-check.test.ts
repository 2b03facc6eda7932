import { expect, test } from 'vitest';
import { run } from '../../src/cli/main.ts';
import { formatJobFile } from '../../src/job/read-job.ts';
import { type Job, withEntry, withForeignSheet, withSheetVersion } from '../../src/job/record.ts';
import { MADE_JOB, WITH_STEPS } from './made-job-file.ts';
import { makeTerminal } from './made-terminal.ts';

async function check(job: Job | string, ...options: readonly string[]) {
  const text = typeof job === 'string' ? job : formatJobFile(job);
  const terminal = makeTerminal({ ...WITH_STEPS, 'a.json': text });
  const code = await run(['job', 'check', 'a.json', ...options], terminal);
  return { code, out: terminal.out(), errors: terminal.errors() };
}

test('a job that fits is told with what is in it', async () => {
  expect(await check(MADE_JOB)).toEqual({
    code: 0,
    out: 'Quarry Lane estate: Five-speed\n2 entries, 1 step ticked, no problem\n',
    errors: '',
  });
});

test('what no longer fits is told sheet by sheet', async () => {
  let job = withEntry(MADE_JOB, '10-shaft', 'width', { text: '5', unit: 'in' });
  job = withSheetVersion(withEntry(job, '99-gone', 'a', { text: '1' }), '10-shaft', 'older');
  const { code, out } = await check(job);
  expect(code).toBe(1);
  expect(out.split('\n')).toEqual([
    'a.json:1:1: sheet 10-shaft has changed since',
    'a.json:1:1: sheet 10-shaft has no place for the entry width: 5 in',
    'a.json:1:1: sheet 99-gone is not here',
    'a.json:1:1: sheet 99-gone has no place for the entry a: 1',
    'Quarry Lane estate: Five-speed',
    '4 entries, 1 step ticked, 4 problems',
    '',
  ]);
});

test('for programs the problems are records', async () => {
  const text = formatJobFile(MADE_JOB).replace('3000', '4000');
  const { code, out } = await check(text, '--json');
  expect(code).toBe(1);
  expect(JSON.parse(out)).toEqual({
    title: 'Five-speed',
    vehicle: 'Quarry Lane estate',
    problems: [
      {
        code: 'unreadable-job',
        message: expect.stringMatching(/^check: does not match/),
        cell: '',
        place: 'a.json:1:1',
      },
    ],
  });
});

test('a sheet from outside is part of the job', async () => {
  const sheet = { version: 'x', text: '# Mine\n\n```given\nwidth = 3 in\n```\n' };
  const job = withEntry(withForeignSheet(MADE_JOB, '21-mine', sheet), '21-mine', 'width', {
    text: '4',
  });
  expect((await check(job)).code).toBe(0);
});

test('what is no job is refused', async () => {
  const { code, out, errors } = await check('hello');
  expect([code, out]).toEqual([2, '']);
  expect(errors).toMatch(/^layshaft: a\.json: This is no job of Layshaft/);
});
