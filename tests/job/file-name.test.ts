import { expect, test } from 'vitest';
import { nameJobFile } from '../../src/job/file-name.ts';

test.each([
  ['Quarry Lane estate', 'Five-speed', 'quarry-lane-estate-five-speed.job.json'],
  ['', 'Größe & Maß', 'gro-e-ma.job.json'],
  ['', '../../etc/passwd', 'etc-passwd.job.json'],
  ['', '\u202e', 'job.job.json'],
  ['x'.repeat(10_000), '', `${'x'.repeat(60)}.job.json`],
])('%.20s, %s is called %s', (vehicle, title, name) => {
  expect(nameJobFile({ vehicle, title })).toBe(name);
});
