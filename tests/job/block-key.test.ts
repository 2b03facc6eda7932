import { expect, test } from 'vitest';
import { listBlockKeys } from '../../src/job/block-key.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import { openNotebooks } from '../support/notebooks.ts';

const SHEET = `# A

\`\`\`given
width = 3 in
height = 4 in
\`\`\`

\`\`\`work
area = width * height
\`\`\`

\`\`\`steps "Sign-off"
- Clean
\`\`\`

\`\`\`steps "Sign-off"
- Again
\`\`\`

\`\`\`chart "Area"
area as in^2 over width from 1 in to 2 in
\`\`\`
`;

test('a block is known by its kind and the first thing that it names', () => {
  expect([...listBlockKeys(readSheet(SHEET, 'a.md')).values()]).toEqual([
    'given width',
    'work area',
    'steps Sign-off',
    'steps Sign-off 2',
    'chart Area',
  ]);
});

test('on the sheets of the house no two blocks share a name', () => {
  for (const sheet of openNotebooks().sheets) {
    const keys = [...listBlockKeys(sheet).values()];
    expect(new Set(keys).size).toBe(keys.length);
  }
});
