import { expect, test } from 'vitest';
import { sheetVersion, textVersion } from '../../src/job/sheet-version.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';

test('the version hangs on the text and on nothing else', () => {
  const sheet = readSheet('# A\n', '10-a.md');
  expect(sheetVersion(sheet)).toMatch(/^[0-9a-f]{16}$/);
  expect(sheetVersion(sheet)).toBe(sheetVersion(readSheet('# A\n', 'elsewhere/20-b.md')));
  expect(sheetVersion(sheet)).not.toBe(sheetVersion(readSheet('# B\n', '10-a.md')));
});

test('line ends of another system make no other version', () => {
  expect(sheetVersion(readSheet('# A\r\n', 'a.md'))).toBe(textVersion('# A\n'));
});
