import { expect, test } from 'vitest';
import { formatJob, formatJobFile } from '../../src/job/read-job.ts';
import { NEW_JOB } from '../../src/job/record.ts';
import { loadDemo } from '../../src/page/load-demo.ts';

const serve =
  (text: string, ok = true) =>
  async () => ({ ok, text: async () => text });
const demo = { ...NEW_JOB, title: 'Quarry Lane estate' };

test('the demo is read from its file', async () => {
  expect(await loadDemo('demo.json', serve(formatJobFile(demo)))).toEqual(demo);
  expect(await loadDemo('demo.json', serve(formatJob(demo)))).toEqual(demo);
});

test.each([
  ['none is shipped', undefined, serve('')],
  ['it cannot be had', 'demo.json', serve('', false)],
  ['it cannot be read', 'demo.json', serve('damaged')],
  [
    'the line is down',
    'demo.json',
    async () => {
      throw new TypeError('no line');
    },
  ],
])('where %s, the examples of the sheets stand', async (_, address, fetch) => {
  expect(await loadDemo(address, fetch)).toBe(NEW_JOB);
});
