import { expect, test } from 'vitest';
import { ADDRESSES, DEMO, fetchText } from '../../src/page/shipped.ts';
import * as inside from '../../src/page/shipped-inside.ts';

test('the same sheets, with the same text, are beside the script and inside the one file', async () => {
  expect(Object.keys(inside.ADDRESSES)).toEqual(Object.keys(ADDRESSES));
  expect(Object.keys(ADDRESSES).length).toBeGreaterThan(10);
  for (const [path, address] of Object.entries(ADDRESSES)) {
    const beside = await (await fetchText(address)).text();
    expect(await (await inside.fetchText(inside.ADDRESSES[path]!)).text()).toBe(beside);
  }
  expect(inside.DEMO === undefined).toBe(DEMO === undefined);
});
