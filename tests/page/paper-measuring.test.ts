import { expect, test } from 'vitest';
import { createMeasuringSheet, listMeasured } from '../../src/page/paper-measuring.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const FIRST = `# Bolts

\`\`\`caution "Eyes"
Goggles on.
\`\`\`

\`\`\`given
flange = 0.512 in "Flange" from 0.25 in to 1 in to 0.001 how "Caliper, three places."
  datum across "flange"
shims = [1, 2] mm "Shims" how "Micrometer."
chosen = 2 in "Chosen"
\`\`\`
`;
const SECOND = '# Words\n\nNothing to measure.\n';

function rowsOf(element: Element) {
  return [...element.querySelectorAll('tbody tr')].map((row) => ({
    text: textOf(row.querySelector('th')),
    unit: textOf(row.querySelector('.unit')),
    box: row.querySelector('.write-in')!,
  }));
}

test('each reading has its label, how it is taken, its unit and an empty box', () => {
  const { desk, sheet } = createTestDesk(FIRST);
  const element = createMeasuringSheet(desk, [sheet]);
  const [flange, shims, ...rest] = rowsOf(element);
  expect(flange!.text).toBe('FlangeCaliper, three places. Usually 0.250 in to 1.000 in.');
  expect(flange!.unit).toBe('in');
  expect(flange!.box.childNodes).toHaveLength(0);
  expect(shims!.unit).toBe('mm');
  expect(shims!.box.className).toBe('write-in long');
  expect(rest).toEqual([]);
});

test('a reading that says between what it is taken has a sketch of it beside its box', () => {
  const { desk, sheet } = createTestDesk(FIRST);
  const rows = [...createMeasuringSheet(desk, [sheet]).querySelectorAll('tbody tr')];
  expect(rows.map((row) => textOf(row.querySelector('.datum desc')))).toEqual([
    'Over the outside: flange.',
    '',
  ]);
  expect(rows.map((row) => row.querySelectorAll('th, td').length)).toEqual([4, 3]);
  expect(rows[1]!.querySelector('th')!.colSpan).toBe(2);
});

test('nothing that is in the job already is on it', () => {
  const { desk, sheet } = createTestDesk(FIRST);
  expect(textOf(createMeasuringSheet(desk, [sheet]))).not.toContain('0.512');
});

test('the cautions of the sheet stand above its readings, and a line to sign below', () => {
  const { desk, sheet } = createTestDesk(FIRST);
  const element = createMeasuringSheet(desk, [sheet]);
  const kinds = [...element.querySelectorAll('h2, .caution, table, .signature')];
  expect(kinds.map((one) => one.className || one.tagName)).toEqual([
    'H2',
    'caution',
    'readings',
    'signature print-only',
  ]);
  expect(textOf(element.querySelector('.caution'))).toContain('Goggles on.');
});

test('units are those of the page', () => {
  const { desk, sheet } = createTestDesk(FIRST);
  desk.chooseSystem('metric');
  expect(rowsOf(createMeasuringSheet(desk, [sheet]))[0]!.unit).toBe('mm');
});

test('a sheet without readings is left out', () => {
  const { desk, sheet } = createTestDesk(FIRST, SECOND);
  expect(listMeasured(desk, desk.book.sheets)).toEqual([sheet]);
  const heads = createMeasuringSheet(desk, desk.book.sheets).querySelectorAll('h2');
  expect([...heads].map(textOf)).toEqual(['10 Bolts']);
});
