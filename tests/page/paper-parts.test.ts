import { expect, test } from 'vitest';
import { withoutNarrative } from '../../src/page/paper-parts.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import type { Sheet } from '../../src/sheet/sheet.ts';

const GIVEN = '```given\nwidth = 3 in\n```\n';
const CAUTION = '```caution "Eyes"\nGoggles on.\n```\n';
const PRACTICE = '```practice "P"\nask width within 1 in "How wide?"\n```\n';

/** Headings with their level, and the blocks. */
function outline(text: string): readonly string[] {
  const sheet: Sheet = withoutNarrative(readSheet(text, 'notebooks/10-a.md'));
  return sheet.parts.flatMap((part) =>
    part.kind === 'narrative' ? part.tokens.map(({ raw }) => raw.trim()) : [part.kind],
  );
}

test('words go, blocks and the headings above them stay', () => {
  expect(outline(`# A\n\nWords.\n\n## B\n\nMore.\n\n${GIVEN}`)).toEqual(['# A', '## B', 'given']);
});

test('cautions stay', () => {
  expect(outline(`# A\n\nWords.\n\n${CAUTION}`)).toEqual(['# A', 'caution']);
});

test('a heading with nothing but words under it goes', () => {
  const text = `# A\n\n## B\n\nWords.\n\n## C\n\n### D\n\nWords.\n\n### E\n\n${GIVEN}\n## F\n\nEnd.\n`;
  expect(outline(text)).toEqual(['# A', '## C', '### E', 'given']);
});

test('a heading stands once, however many blocks are under it', () => {
  expect(outline(`# A\n\n## B\n\n${GIVEN}\nWords.\n\n${CAUTION}`)).toEqual([
    '# A',
    '## B',
    'given',
    'caution',
  ]);
});

test('a sheet whose headings are all of one level keeps its title', () => {
  expect(outline(`# A\n\n# B\n\n${GIVEN}`)).toEqual(['# A', '# B', 'given']);
});

test('a question goes with the words that lead to it', () => {
  expect(outline(`# A\n\n${GIVEN}\n${PRACTICE}`)).toEqual(['# A', 'given']);
});

test('a sheet of words alone is its title, and an empty one is empty', () => {
  expect(outline('# A\n\nWords.\n')).toEqual(['# A']);
  expect(outline('')).toEqual([]);
});
