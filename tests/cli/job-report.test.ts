import { DOMParser } from 'linkedom';
import { expect, test } from 'vitest';
import { run } from '../../src/cli/main.ts';
import { formatJobFile } from '../../src/job/read-job.ts';
import { type Job, NEW_JOB, withEntry } from '../../src/job/record.ts';
import { MADE_JOB, WITH_STEPS } from './made-job-file.ts';
import { makeTerminal } from './made-terminal.ts';

async function report(job: Job, html = 'out.html') {
  const terminal = makeTerminal({ ...WITH_STEPS, 'a.json': formatJobFile(job) });
  const code = await run(['job', 'report', 'a.json', '--html', html], terminal);
  const page = terminal.files.get(html) ?? terminal.out();
  const document = new DOMParser().parseFromString(page, 'text/html');
  const rows = (caption: string) =>
    [...document.querySelectorAll('table')]
      .filter((table) => table.querySelector('caption')?.textContent === caption)
      .flatMap((table) => [...table.querySelectorAll('tr')].slice(1))
      .map((row) => [...row.querySelectorAll('td')].map((cell) => cell.textContent));
  return { code, page, document, rows, errors: terminal.errors() };
}

test('the record holds readings, results, checks, steps and notes', async () => {
  const { code, document, rows } = await report(MADE_JOB);
  expect(code).toBe(0);
  expect(document.querySelector('h1')?.textContent).toBe('Quarry Lane estate: Five-speed');
  expect([...document.querySelectorAll('h2')].map((one) => one.textContent)).toEqual(['Shaft']);
  expect(rows('Readings')).toEqual([
    ['Turning speed', '3000 rpm', expect.stringMatching(/^3000.rpm$/)],
    ['Ratio', '4', '4.00'],
  ]);
  expect(rows('Results')[0]).toEqual(['Out', expect.stringMatching(/^750.rpm$/)]);
  expect(rows('Checks')[0]?.slice(0, 2)).toEqual(['Out', 'passes']);
  expect(rows('Steps')).toEqual([
    ['Cleaned', '2026-03-14', 'Ann'],
    ['Oiled', '', ''],
  ]);
  expect(document.querySelector('.note')?.textContent).toBe('given spin: By <stroboscope> & ear');
});

test('what was typed is never markup', async () => {
  const hostile = '<script>alert(1)</script><img src=x onerror=alert(1)>';
  const job = withEntry({ ...MADE_JOB, title: hostile, vehicle: '"&' }, '10-shaft', 'ratio', {
    text: hostile,
  });
  const { code, page, document } = await report(job);
  expect(code).toBe(1);
  expect(document.querySelectorAll('script, img')).toHaveLength(0);
  expect(page).toContain("default-src 'none'");
  expect(document.querySelector('h1')?.textContent).toBe(`"&: ${hostile}`);
});

test('what is amiss stands first', async () => {
  const job = withEntry(MADE_JOB, '10-shaft', 'width', { text: '5' });
  const { code, document } = await report(job);
  expect(code).toBe(1);
  expect(document.querySelector('.amiss')?.textContent).toContain('no place for the entry width');
});

test('a job in which nothing was entered says so, on standard output if that is wanted', async () => {
  const { code, document } = await report(NEW_JOB, '-');
  expect(code).toBe(0);
  expect(document.querySelector('p')?.textContent).toBe('Nothing has been entered yet.');
});

test('a file that cannot be written is told', async () => {
  const { code, errors } = await report(MADE_JOB, 'closed/out.html');
  expect(code).toBe(2);
  expect(errors).toMatch(/cannot write closed\/out\.html/);
});
