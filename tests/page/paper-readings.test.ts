import { expect, test } from 'vitest';
import { listCautions, listReadings } from '../../src/page/paper-readings.ts';
import { linkBook } from '../../src/sheet/book.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';

const FENCE = '```';
const TEXT = `# Bolts

${FENCE}given
flange = 0.5 in "Flange" how "Caliper."
${FENCE}

## In the block

${FENCE}caution "Eyes"
Goggles on.
${FENCE}

${FENCE}given
depth = 1 in "Depth" how "A bolt wound in."
chosen = 2 in "Chosen"
washer = 1/16 in "Washer" datum across "washer"
${FENCE}

## Nothing to read

${FENCE}given
other = 2 in "Other"
${FENCE}
`;

test('readings stand in the order of the sheet, under its headings; what is chosen is none', () => {
  const sheet = readSheet(TEXT, 'notebooks/10-bolts.md');
  const groups = listReadings(linkBook([sheet]), sheet);
  expect(
    groups.map(({ heading, readings }) => [heading, readings.map(({ name }) => name)]),
  ).toEqual([
    [undefined, ['flange']],
    ['In the block', ['depth', 'washer']],
  ]);
  expect(listCautions(sheet).map(({ title }) => title)).toEqual(['Eyes']);
});
