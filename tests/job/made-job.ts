import fc from 'fast-check';
import { type Job, NEW_JOB } from '../../src/job/record.ts';

/** A job with something in every field. */
export const FULL: Job = {
  title: 'Estate, five-speed',
  vehicle: 'Quarry Lane estate',
  worker: 'A. N. Other',
  system: 'metric',
  entries: {
    '20-gearing': {
      redline: { text: '5 800', unit: 'rpm' },
      gear_ratios: { text: 'Close five-speed' },
    },
    '70-release-bearing': {
      finger_reading: { text: '3.212 ± 0.003', unit: 'in' },
      wanted_gap: { text: '' },
    },
  },
  ticks: { '20-gearing': { 'tyre-size': { on: '2026-03-14', by: 'A. N. Other' } } },
  notes: { '20-gearing': { 'given tyre_width': 'Read off the\nnear-side tyre.' } },
  attempts: {
    '20-gearing': { 'A question': [{ seed: 1, typed: '5', told: 'right', seconds: 12 }] },
  },
  variants: [
    { name: 'Short axle', entries: { '20-gearing': { axle_ratio: '3.73' } } },
    { name: 'And big tyres', base: 'Short axle', entries: {} },
  ],
  captions: { '20-gearing': { 'chart Speed': { caption: 'Speed in each gear', alt: 'A chart' } } },
  sheets: { '20-gearing': '0123456789abcdef' },
  foreign: { '21-mine': { version: 'fedcba9876543210', text: '# Mine\n' } },
  others: { colour: 'green', later: { deep: [1, 2, { x: null }] } },
};

export const HOSTILE_NAMES = [
  '__proto__',
  'constructor',
  'toString',
  'hasOwnProperty',
  'x'.repeat(10_000),
  '\u202eright to left\u202c',
  '\u200f',
  '',
  '0',
  '"quoted"',
  '\ud800',
  'a\nb',
] as const;

const name = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 12 }),
  fc.constantFrom(...HOSTILE_NAMES),
);
const text = fc.string({ unit: 'binary', maxLength: 20 });

/** A record two names deep, with nothing empty in it, as the page makes it. */
function nested<T>(leaf: fc.Arbitrary<T>) {
  const inner = fc.array(fc.tuple(name, leaf), { minLength: 1, maxLength: 4 });
  return fc
    .array(
      fc.tuple(
        name,
        inner.map((pairs) => Object.fromEntries(pairs)),
      ),
      { maxLength: 4 },
    )
    .map((pairs) => Object.fromEntries(pairs));
}

/** Any job that the page could come to hold. */
export const anyJob: fc.Arbitrary<Job> = fc.record({
  title: text,
  vehicle: text,
  worker: text,
  system: fc.constantFrom('inch-pound', 'metric'),
  entries: nested(fc.record({ text, unit: text }, { requiredKeys: ['text'] })),
  ticks: nested(fc.record({ on: text, by: text }, { requiredKeys: ['on'] })),
  notes: nested(text),
  attempts: nested(
    fc.array(fc.record({ seed: fc.nat(), typed: text, told: text, seconds: fc.nat() }), {
      minLength: 1,
      maxLength: 3,
    }),
  ),
  variants: fc.array(fc.record({ name, entries: nested(text) }), { maxLength: 3 }),
  captions: nested(fc.record({ caption: text, alt: text })),
  sheets: fc.dictionary(name, text, { maxKeys: 3 }),
  foreign: fc.constant({}),
});

/** A job of so many bytes and a little more. */
export function makeLargeJob(bytes: number): Job {
  const lines = Math.ceil(bytes / 1000);
  const notes = Object.fromEntries(
    Array.from({ length: lines }, (_, i) => [`given name_${i}`, `${i} `.padEnd(980, 'words ')]),
  );
  return { ...NEW_JOB, title: 'Large', notes: { '20-gearing': notes } };
}
