import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatJob, parseJob } from '../../src/job/read-job.ts';
import { type Job, NEW_JOB, withEntry, withTick } from '../../src/job/record.ts';

test('a job comes back as it was stored', () => {
  const job = withTick(
    withEntry(NEW_JOB, '20-gearing', 'redline', { text: '5 800', unit: 'rpm' }),
    '20-gearing',
    'tyre-size',
    '2026-03-14',
  );
  expect(parseJob(formatJob(job))).toEqual({ ok: true, job });
});

test('any job that can be typed comes back', () => {
  const entry = fc.record({ text: fc.string(), unit: fc.string() }, { requiredKeys: ['text'] });
  fc.assert(
    fc.property(fc.string(), fc.string(), entry, (sheet, name, typed) => {
      const job: Job = withEntry(NEW_JOB, sheet, name, typed);
      expect(parseJob(formatJob(job))).toEqual({ ok: true, job });
    }),
  );
});

test('proposals come back with the job, and a job of before has none', () => {
  const variants = [
    { name: 'Short axle', entries: { '20-gearing': { axle_ratio: '3.73' } } },
    { name: 'And big tyres', base: 'Short axle', entries: {} },
  ];
  const job: Job = { ...NEW_JOB, variants };
  expect(parseJob(formatJob(job))).toEqual({ ok: true, job });
  const old = '{"schema":1,"title":"x","system":"metric","entries":{},"ticks":{}}';
  expect(parseJob(old)).toMatchObject({ ok: true, job: { variants: [] } });
});

test.each([
  ['text cut off', '{"schema":1,"titl', /was cut off/],
  ['an empty text', '', /was cut off/],
  ['a list', '[]', /is not a job/],
  ['null', 'null', /is not a job/],
  ['no version', '{}', /does not tell its version/],
  ['a newer version', '{"schema":2}', /has version 2; this page reads version 1 and older/],
  ['an unknown system', '{"schema":1,"system":"cubits"}', /unknown system of units/],
  [
    'entries that are no entries',
    '{"schema":1,"system":"metric","entries":{"a":{"b":3}},"ticks":{}}',
    /entries that cannot be read/,
  ],
  [
    'ticks that are no days',
    '{"schema":1,"system":"metric","entries":{},"ticks":{"a":{"b":true}}}',
    /ticked steps that cannot be read/,
  ],
  [
    'a proposal without a name',
    '{"schema":1,"system":"metric","entries":{},"ticks":{},"variants":[{"entries":{}}]}',
    /proposals that cannot be read/,
  ],
])('%s is refused as a whole', (_, text, message) => {
  const reading = parseJob(text);
  expect(reading).toMatchObject({ ok: false, message: expect.stringMatching(message) });
});
