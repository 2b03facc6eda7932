import { expect, test } from 'vitest';
import { FONT_PATHS, loadTypeface } from '../../src/export/tools.ts';
import { readPackageFile } from './tools.ts';

test('the fonts are where the packages have them', async () => {
  for (const path of Object.values(FONT_PATHS)) {
    // A WOFF file starts with this signature (W3C, WOFF File Format 1.0).
    const signature = new TextDecoder().decode(readPackageFile(path).slice(0, 4));
    expect(signature, path).toBe('wOFF');
  }
});

test('each font is read once', async () => {
  const asked: string[] = [];
  await loadTypeface(async (name) => {
    asked.push(name);
    return readPackageFile(FONT_PATHS[name]);
  });
  expect(asked.toSorted()).toEqual(['bold', 'regular', 'symbols']);
});
