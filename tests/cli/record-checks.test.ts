import { expect, test } from 'vitest';
import { recordChecks } from '../../src/cli/record-checks.ts';
import type { CheckRecord } from '../../src/cli/solve-record.ts';
import { linkBook } from '../../src/sheet/book.ts';
import { createFrame } from '../../src/sheet/create-frame.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import { solve } from '../../src/sheet/solve.ts';

const F = '```';
const SHEET = `# Checks

${F}given
gap = 0.165 in to 0.001
nothing = blank mm
${F}

${F}work
each = [1, 2, 9] * 1 mm as mm to 1
${F}

${F}check
gap between 0.125 in and 0.200 in
gap between 0.2 in and 0.3 in below "Too tight."
gap at most 0.1 in
each at most 5 mm above "One is too long."
nothing at least 1 mm
gap at least 2 rpm
${F}
`;

function record(): readonly CheckRecord[] {
  const book = linkBook([readSheet(SHEET, 'checks.md')]);
  const frame = createFrame(book);
  solve(book, frame);
  return recordChecks(book, frame, 'checks').map((check) => ({
    ...check,
    text: check.text.replaceAll('\u00a0', ' '),
  }));
}

test.each([
  [0, 'gap', 'pass', /0\.035 in/],
  [1, 'gap', 'fail', /0\.165 in .*0\.2.* in.*Too tight\.$/],
  [2, 'gap', 'fail', /0\.065 in.*0\.1.* in/],
  [3, 'each', 'fail', /3rd.*9 mm.*One is too long\.$/],
  [4, 'nothing', 'unknown', /nothing is blank$/],
  [5, 'gap', 'unknown', /cannot compare .*length.*turning speed/],
])('check %d, of %s, is %s', (index, name, verdict, text) => {
  expect(record()[index]).toEqual({ name, verdict, text: expect.stringMatching(text) });
});
