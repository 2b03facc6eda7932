import { expect, test } from 'vitest';
import { reportSheet } from '../../src/cli/job-report-sheet.ts';
import { NEW_JOB, withEntry, withSystem } from '../../src/job/record.ts';
import { createFrame } from '../../src/sheet/create-frame.ts';
import { enterGiven } from '../../src/sheet/enter.ts';
import { solve } from '../../src/sheet/solve.ts';
import { openText } from '../support/notebooks.ts';

const SHEET = '# A\n\n```given\nwidth = 2 in "Width" to 0.1\nopen = 1 in "Open"\n```\n';

test('entries are told as they were typed and as they were understood, in the units of the job', () => {
  const book = openText(SHEET);
  const frame = createFrame(book);
  const entries = { width: { text: '25.4 mm' }, open: { text: '', unit: 'in' } };
  let job = withSystem(NEW_JOB, 'metric');
  for (const [name, entry] of Object.entries(entries)) {
    job = withEntry(job, 'made', name, entry);
    enterGiven(book, frame, book.find('made', name)!.index, entry);
  }
  solve(book, frame);
  const { readings } = reportSheet(job, book, frame, book.sheets[0]!);
  expect(readings).toEqual([
    ['Width', '25.4 mm', expect.stringMatching(/^25.?.?.mm$/)],
    ['Open', 'left blank', 'blank'],
  ]);
});
