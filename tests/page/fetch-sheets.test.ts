import { expect, test } from 'vitest';
import { fetchSheets } from '../../src/page/fetch-sheets.ts';

const files: Readonly<Record<string, string>> = {
  '/a.md': '# Hundred',
  '/b.md': '# Twenty',
  '/c.md': '# Guide',
};
const addresses = {
  '../../notebooks/100-last.md': '/a.md',
  '../../notebooks/20-gearing.md': '/b.md',
  '../../notebooks/00-guide.md': '/c.md',
};
const serve = async (address: string) => ({
  ok: address in files,
  text: async () => files[address]!,
});

test('sheets come in the order of the job, by number and not by letter', async () => {
  const { sheets, missing } = await fetchSheets(addresses, serve);
  expect(sheets.map((sheet) => sheet.title)).toEqual(['Guide', 'Twenty', 'Hundred']);
  expect(sheets[1]?.file).toBe('notebooks/20-gearing.md');
  expect(missing).toEqual([]);
});

test('a sheet that cannot be had is named, and the others stand', async () => {
  const gone = { ...addresses, '../../notebooks/30-torque.md': '/gone.md' };
  const { sheets, missing } = await fetchSheets(gone, serve);
  expect(sheets).toHaveLength(3);
  expect(missing).toEqual(['notebooks/30-torque.md']);
});

test('a line that is down is no reason to fall over', async () => {
  const { sheets, missing } = await fetchSheets(addresses, async () => {
    throw new TypeError('no line');
  });
  expect(sheets).toEqual([]);
  expect(missing).toHaveLength(3);
});
