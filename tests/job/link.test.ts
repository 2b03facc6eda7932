import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatLink, parseLink } from '../../src/job/link.ts';
import { isLink } from '../../src/job/link-form.ts';
import { NEW_JOB, withEntry } from '../../src/job/record.ts';
import { anyJob, FULL } from './made-job.ts';

test('a job comes back from its link', () => {
  expect(parseLink(formatLink(FULL))).toEqual({ ok: true, job: FULL, issues: [] });
});

test('any job does', () => {
  fc.assert(
    fc.property(anyJob, (job) => {
      const link = formatLink(job);
      expect(isLink(link)).toBe(true);
      expect(link).toMatch(/^#[\w=.-]+$/);
      expect(parseLink(link)).toEqual({ ok: true, job, issues: [] });
    }),
  );
});

test('a job with a few readings is a short link', () => {
  const job = withEntry(NEW_JOB, '20-gearing', 'redline', { text: '5800', unit: 'rpm' });
  expect(formatLink(job).length).toBeLessThan(250);
});

test('a link cut at any length says that it was cut', () => {
  const link = formatLink(FULL);
  for (let length = 2; length < link.length; length += 1) {
    const cut = link.slice(0, length);
    expect(isLink(cut)).toBe(true);
    expect(parseLink(cut)).toEqual({
      ok: false,
      message: expect.stringMatching(/^This link was cut off on its way/),
    });
  }
});

test('a link with any letter changed is refused', () => {
  const link = formatLink(FULL);
  for (let at = '#job='.length; at < link.length; at += 1) {
    const other = link[at] === 'x' ? 'y' : 'x';
    const reading = parseLink(link.slice(0, at) + other + link.slice(at + 1));
    expect(reading).toMatchObject({ ok: false, message: expect.stringMatching(/^This link/) });
  }
});

test('a link of a newer form is refused as such', () => {
  expect(parseLink('#job=2.a.b.c')).toEqual({
    ok: false,
    message: expect.stringMatching(/made by a newer Layshaft \(form 2\)/),
  });
});
