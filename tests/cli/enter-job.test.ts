import { expect, test } from 'vitest';
import { readStoredJob } from '../../src/cli/enter-job.ts';
import { run } from '../../src/cli/main.ts';
import { formatJobFile } from '../../src/job/read-job.ts';
import { NEW_JOB, withEntry } from '../../src/job/record.ts';
import { MADE_FILES, MADE_JOB } from './made-job-file.ts';
import { makeTerminal } from './made-terminal.ts';

async function solve(...typed: readonly string[]) {
  const terminal = makeTerminal({
    ...MADE_FILES,
    'bad.json': formatJobFile(withEntry(NEW_JOB, '10-shaft', 'ratio', { text: 'x' })),
    'newer.json': '{"app":"layshaft","schema":99}',
    'cut.json': formatJobFile(MADE_JOB).slice(0, -30),
  });
  const code = await run(['solve', '10-shaft', '--json', ...typed], terminal);
  return { code, terminal, record: () => JSON.parse(terminal.out()) };
}

test('a sheet is worked with the entries of a job', async () => {
  const { code, record } = await solve('--job', 'a.job.json');
  expect(code).toBe(0);
  expect(record().results.out).toMatchObject({ value: expect.closeTo(750, 9), unit: 'rpm' });
});

test('an entry that is named comes before the one of the job', async () => {
  const { record } = await solve('--job', 'a.job.json', '--given', 'ratio=2');
  expect(record().results.out.value).toBeCloseTo(1500, 9);
});

test('an entry of the job that cannot be read is a problem, unless another is named', async () => {
  const bad = await solve('--job', 'bad.json');
  expect(bad.code).toBe(1);
  expect(bad.record().problems[0]).toMatchObject({
    code: 'name-in-entry',
    cell: '10-shaft/ratio',
    place: 'bad.json:1:1',
  });
  expect((await solve('--job', 'bad.json', '--given', 'ratio=2')).code).toBe(0);
});

test('a damaged job is worked as far as it goes, and that is a problem', async () => {
  const { code, record } = await solve('--job', 'cut.json');
  expect(code).toBe(1);
  expect(record().problems[0].code).toBe('unreadable-job');
});

test.each([
  ['none.json', /there is no job file "none\.json"/],
  ['newer.json', /newer\.json: This job has version 99/],
  ['notebooks/10-shaft.md', /This is no job of Layshaft/],
])('%s is refused', async (path, sentence) => {
  const { code, terminal } = await solve('--job', path);
  expect(code).toBe(2);
  expect(terminal.out()).toBe('');
  expect(terminal.errors()).toMatch(sentence);
});

test('where no file is named there is a job of nothing', () => {
  expect(readStoredJob(makeTerminal(), undefined)).toMatchObject({ job: NEW_JOB, problems: [] });
});
