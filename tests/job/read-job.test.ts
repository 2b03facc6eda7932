import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import schema from '../../shared/job.schema.json' with { type: 'json' };
import { isShallow } from '../../src/job/json.ts';
import {
  formatIssue,
  formatJob,
  formatJobFile,
  parseJob,
  parseJobFile,
} from '../../src/job/read-job.ts';
import { type Job, NEW_JOB, withEntry } from '../../src/job/record.ts';
import { anyJob, FULL, HOSTILE_NAMES, makeLargeJob } from './made-job.ts';

const fixture = (version: number): string =>
  readFileSync(new URL(`fixtures/job-${version}.json`, import.meta.url), 'utf8');
const whole = (job: Job) => ({ ok: true, job, issues: [] });

function issuesOf(text: string): readonly string[] {
  const reading = parseJobFile(text);
  if (!reading.ok) throw new Error(reading.message);
  return reading.issues.map(formatIssue);
}

describe('a job comes back', () => {
  test('with every field, unknown ones included, from the store and from a file', () => {
    expect(parseJob(formatJob(FULL))).toEqual(whole(FULL));
    expect(parseJobFile(formatJobFile(FULL))).toEqual(whole(FULL));
  });

  test('whatever was typed into it', () => {
    fc.assert(
      fc.property(anyJob, (job) => {
        expect(parseJob(formatJob(job))).toEqual(whole(job));
        expect(parseJobFile(formatJobFile(job))).toEqual(whole(job));
      }),
      { numRuns: 300 },
    );
  });

  test.each(HOSTILE_NAMES)('with a name such as %j', (name) => {
    const job = withEntry(NEW_JOB, name, name, { text: name });
    expect(parseJobFile(formatJobFile(job))).toEqual(whole(job));
    expect(Object.hasOwn(Object.prototype, 'text')).toBe(false);
  });

  test('of ten megabytes', () => {
    const job = makeLargeJob(10_000_000);
    const text = formatJobFile(job);
    expect(text.length).toBeGreaterThan(10_000_000);
    expect(parseJobFile(text)).toEqual(whole(job));
  });

  test('with a byte order mark before it', () => {
    expect(parseJobFile(`\uFEFF${formatJobFile(FULL)}`)).toEqual(whole(FULL));
  });
});

describe('the file', () => {
  test('is the same for the same job, whatever order it was filled in', () => {
    const one = withEntry(withEntry(NEW_JOB, 's', 'a', { text: '1' }), 's', 'b', { text: '2' });
    const other = withEntry(withEntry(NEW_JOB, 's', 'b', { text: '2' }), 's', 'a', { text: '1' });
    expect(formatJobFile(one)).toBe(formatJobFile(other));
  });

  test('is what its published schema says', () => {
    const validate = new Ajv2020({ strict: false }).compile(schema);
    const judge = (text: string) => [validate(JSON.parse(text)), validate.errors];
    expect(judge(formatJobFile(FULL))).toEqual([true, null]);
    expect(judge(formatJobFile(NEW_JOB))).toEqual([true, null]);
    fc.assert(fc.property(anyJob, (job) => validate(JSON.parse(formatJobFile(job)))));
  });

  test.each([
    ['entries', { a: { b: { unit: 'in' } } }],
    ['entries', { a: 3 }],
    ['ticks', { a: { b: '2026-03-14' } }],
    ['notes', { a: { b: 3 } }],
    ['attempts', { a: { b: [{ seed: 1 }] } }],
    ['variants', [{ entries: {} }]],
    ['captions', { a: { b: { alt: 3 } } }],
    ['sheets', { a: 3 }],
    ['foreign', { a: { text: '' } }],
    ['system', 'cubits'],
    ['title', 3],
  ])('with wrong %s is refused by the schema and told of by the reading', (field, value) => {
    const validate = new Ajv2020({ strict: false }).compile(schema);
    const data = { app: 'layshaft', schema: 2, [field]: value };
    expect(validate(data)).toBe(false);
    expect(parseJob(JSON.stringify(data))).toMatchObject({ ok: true, issues: [{}] });
  });
});

describe('an older version', () => {
  test('1 is brought up, with what it did not know left as it is', () => {
    expect(parseJobFile(fixture(1))).toEqual(
      whole({
        ...NEW_JOB,
        system: 'metric',
        entries: {
          '20-gearing': { redline: { text: '5 800', unit: 'rpm' } },
          '70-release-bearing': { finger_reading: { text: '3.212 ± 0.003', unit: 'in' } },
        },
        ticks: { '20-gearing': { 'tyre-size': { on: '2026-03-14' } } },
        attempts: {
          '20-gearing': { 'A question': [{ seed: 1, typed: '5', told: 'right', seconds: 12 }] },
        },
        others: { colour: 'green' },
      }),
    );
  });

  test('2, the one that is written now, is read as it was written', () => {
    expect(parseJobFile(fixture(2))).toEqual(whole(FULL));
    expect(formatJobFile(FULL)).toBe(fixture(2));
  });
});

test.each([
  ['an empty text', '', /cannot be read at all/],
  ['words', 'hello', /cannot be read at all/],
  ['a list', '[]', /cannot be read at all/],
  ['null', 'null', /cannot be read at all/],
  ['some other record', '{"name":"x"}', /neither a version nor anything entered/],
  [
    'a newer version',
    '{"schema":3,"app":"layshaft"}',
    /version 3 and was written by a newer Layshaft.*left as it is/,
  ],
  [
    'a version that is none',
    '{"schema":"two","app":"layshaft"}',
    /does not tell its version: "two"/,
  ],
  ['version nought', '{"schema":0}', /does not tell its version: 0/],
])('%s is refused in a sentence', (_, text, message) => {
  expect(parseJobFile(text)).toEqual({ ok: false, message: expect.stringMatching(message) });
});

describe('a damaged file', () => {
  test('that is cut off opens with what stands before the cut, and says so', () => {
    const text = formatJobFile(FULL);
    const cut = text.slice(0, text.indexOf('"notes"'));
    const reading = parseJobFile(cut);
    expect(reading).toMatchObject({ ok: true, job: { entries: FULL.entries, notes: {} } });
    expect(issuesOf(cut)[0]).toMatch(/^line \d+: the text is cut off here$/);
  });

  test('in which one digit is another opens with a warning', () => {
    const text = formatJobFile(FULL).replace('3.212', '3.112');
    expect(issuesOf(text)).toEqual([expect.stringMatching(/^check: does not match/)]);
  });

  test('without its check sum opens with a warning', () => {
    expect(issuesOf('{"app":"layshaft","schema":2}')).toEqual([
      expect.stringMatching(/^check: is missing/),
    ]);
  });

  test('lists every entry that cannot be read by its names', () => {
    const text = '{"schema":1,"entries":{"20-gearing":{"redline":3,"axle_ratio":{"text":"4"}}}}';
    expect(issuesOf(text)).toEqual(['entries, 20-gearing, redline: cannot be read']);
    expect(parseJob(text)).toMatchObject({
      job: { entries: { '20-gearing': { axle_ratio: { text: '4' } } } },
    });
  });

  test('with a name of ten thousand letters is told in a line', () => {
    const text = JSON.stringify({ schema: 1, notes: { ['x'.repeat(10_000)]: 3 } });
    expect(issuesOf(text)[0]!.length).toBeLessThan(100);
  });

  test('with a field nested without end opens without that field', () => {
    const deep = '['.repeat(5000) + ']'.repeat(5000);
    const text = `{"schema":1,"later":${deep},"notes":{"a":{"b":"kept"}}}`;
    expect(parseJob(text)).toMatchObject({ ok: true, job: { notes: { a: { b: 'kept' } } } });
    expect(issuesOf(text)).toEqual(['later: is nested too deep to be kept']);
  });
});

/** Every kind of damage, each at a random place. */
const damages: readonly ((text: string, at: number, other: number) => string)[] = [
  (text, at) => text.slice(0, at),
  (text, at) => text.slice(at),
  (text, at, other) => text.slice(0, at) + text.slice(at + 1 + (other % 40)),
  (text, at, other) => text.slice(0, at) + text.slice(other) + text.slice(at),
  (text, at, other) => text.slice(0, at) + String.fromCharCode(other % 65_536) + text.slice(at + 1),
  (text, at, other) => text.slice(0, at) + '{}[]",:\\0n\n'[other % 11] + text.slice(at + 1),
  (text, at, other) => text.slice(0, at) + '{}[]",:\\0n\n'[other % 11] + text.slice(at),
  (text, at, other) => text.slice(other) + text.slice(0, at),
  (text, at, other) => text.slice(0, at) + '\0'.repeat(other % 50) + text.slice(at + (other % 50)),
  (text, at, other) => swapLines(text, at, other),
];

function swapLines(text: string, at: number, other: number): string {
  const lines = text.split('\n');
  const [a, b] = [at % lines.length, other % lines.length];
  [lines[a], lines[b]] = [lines[b]!, lines[a]!];
  return lines.join('\n');
}

test('ten thousand damaged files: a sentence, or the job whole, or told what is amiss', () => {
  const sound = formatJobFile(FULL);
  const place = fc.nat({ max: sound.length });
  const damage = fc.tuple(fc.constantFrom(...damages), place, place);
  const seen = { whole: 0, partly: 0, refused: 0 };
  fc.assert(
    fc.property(fc.array(damage, { minLength: 1, maxLength: 3 }), (all) => {
      const text = all.reduce((damaged, [harm, at, other]) => harm(damaged, at, other), sound);
      const reading = parseJobFile(text);
      if (!reading.ok) {
        seen.refused += 1;
        return /^This job|^This is no job/.test(reading.message);
      }
      seen[reading.issues.length === 0 ? 'whole' : 'partly'] += 1;
      if (reading.issues.length === 0) expect(reading.job).toEqual(FULL);
      return isShallow(reading.job) && reading.issues.every((one) => formatIssue(one).length < 500);
    }),
    { numRuns: 10_000 },
  );
  // Each of the three ends was met, so the test has tested them.
  expect(Math.min(seen.whole, seen.partly, seen.refused)).toBeGreaterThan(10);
});
