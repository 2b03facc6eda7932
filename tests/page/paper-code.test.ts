import { expect, test } from 'vitest';
import { formatLink } from '../../src/job/link.ts';
import { type Job, NEW_JOB, withEntry } from '../../src/job/record.ts';
import { h } from '../../src/page/element.ts';
import { placePaperCode } from '../../src/page/paper-code.ts';
import { textOf } from './test-desk.ts';

/** A print of two sheets with the code of a job placed on it. */
function place(job: Job) {
  const [first, last] = [h('section', {}, h('h1')), h('section', {}, h('p'))];
  placePaperCode(job, first, last);
  return { first, last };
}

const sizeOf = (job: Job) =>
  Number.parseFloat(place(job).first.querySelector('svg')!.getAttribute('width')!);

test('a short job has a code at the head of the first sheet, large enough for a telephone', () => {
  const { first, last } = place(NEW_JOB);
  const code = first.querySelector('.paper-code:first-child > svg')!;
  expect(sizeOf(NEW_JOB)).toBeGreaterThanOrEqual(32);
  expect(code.getAttribute('height')).toBe(code.getAttribute('width'));
  expect(textOf(first)).toContain('Opens this job on another device, as a copy');
  expect(last.querySelector('.paper-code')).toBeNull();
});

test('the longer the link, the larger its code', () => {
  const words = Array.from({ length: 60 }, (_, i) => `${i * 7919} mm`).join(' ');
  const longer = withEntry(NEW_JOB, 'bolts', 'flange', { text: words });
  expect(sizeOf(longer)).toBeGreaterThan(sizeOf(NEW_JOB));
});

test('a job too long for a link says so at the foot of the last sheet, and what to take', () => {
  const words = Array.from({ length: 3000 }, (_, i) => Math.sin(i).toFixed(6)).join(' ');
  const job = withEntry(NEW_JOB, 'bolts', 'flange', { text: words });
  expect(formatLink(job).length).toBeGreaterThan(2000);
  const { first, last } = place(job);
  expect(first.querySelector('.paper-code')).toBeNull();
  expect(textOf(last.querySelector('.paper-code:last-child'))).toMatch(
    /would have [\d,]+ characters\..* hand over the file\.$/,
  );
});
