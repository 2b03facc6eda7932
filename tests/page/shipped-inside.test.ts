import { expect, test } from 'vitest';
import { ADDRESSES, fetchText } from '../../src/page/shipped-inside.ts';

test('every sheet is had without asking anyone', async () => {
  const path = Object.keys(ADDRESSES).find((one) => one.endsWith('20-gearing.md'))!;
  const response = await fetchText(ADDRESSES[path]!);
  expect(response.ok).toBe(true);
  expect(await response.text()).toMatch(/^# Gearing/);
});

test('what is not inside is not there', async () => {
  expect((await fetchText('constructor')).ok).toBe(false);
});
