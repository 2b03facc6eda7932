import { expect, test } from 'vitest';
import { createHistory } from '../../src/job/history.ts';
import { type Job, NEW_JOB, withEntry } from '../../src/job/record.ts';
import { createLiveDesk } from '../../src/page/live-desk.ts';
import { linkBook } from '../../src/sheet/book.ts';
import type { GivenCell } from '../../src/sheet/cell.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';

const SHEET = `
\`\`\`given
width = 3 in "Width"
other = 1 in "Other"
\`\`\`

\`\`\`work
twice = 2 * width as in
\`\`\`
`;

function create(job: Job = NEW_JOB) {
  const book = linkBook([readSheet(SHEET, '10-sheet.md')]);
  const worked: string[][] = [];
  const jobs: Job[] = [];
  const desk = createLiveDesk({
    book,
    history: createHistory(job),
    today: () => '2026-03-14',
    onWorked: (cells) => worked.push([...cells].map((cell) => book.cells[cell]!.name).sort()),
    onJob: (history) => jobs.push(history.job),
  });
  const cell = (name: string) => book.find('10-sheet', name) as GivenCell;
  const twice = () => {
    const outcome = desk.outcomeOf(cell('twice').index);
    return outcome.state === 'value' ? (outcome.value as number) / 0.0254 : outcome.state;
  };
  return { desk, cell, twice, worked, jobs };
}

test('results are there at once, from what was stored', () => {
  const { twice } = create(withEntry(NEW_JOB, '10-sheet', 'width', { text: '4' }));
  expect(twice()).toBeCloseTo(8, 12);
});

test('an entry is worked through, and only what hangs on it', async () => {
  const { desk, cell, twice, worked } = create();
  await desk.settled();
  worked.splice(0);
  desk.enter(cell('width'), { text: '5', unit: 'in' });
  await desk.settled();
  await Promise.resolve();
  expect(twice()).toBeCloseTo(10, 12);
  expect(new Set(worked.flat())).toEqual(new Set(['width', 'twice']));
});

test('undo and redo work the sheet again', async () => {
  const { desk, cell, twice } = create();
  desk.enter(cell('width'), { text: '5' });
  desk.undo();
  await desk.settled();
  expect(twice()).toBeCloseTo(6, 12);
  desk.redo();
  await desk.settled();
  expect(twice()).toBeCloseTo(10, 12);
});

test('a drag is named from where it began', () => {
  const { desk, cell } = create();
  for (const text of ['4', '5', '6']) desk.enter(cell('width'), { text, unit: 'in' }, 'drag');
  expect(desk.history().past.map((step) => step.label)).toEqual(['Width, 3 in to 6 in']);
});

test('a change of units leaves entries alone and is one step', () => {
  const { desk, jobs } = create();
  desk.chooseSystem('metric');
  expect(desk.system()).toBe('metric');
  expect(jobs).toEqual([{ ...NEW_JOB, system: 'metric' }]);
});

test('another job takes the place of this one and can be taken back', async () => {
  const { desk, twice } = create();
  desk.replace('another', withEntry(NEW_JOB, '10-sheet', 'width', { text: '' }));
  await desk.settled();
  expect(twice()).toBe('waiting');
  desk.undo();
  await desk.settled();
  expect(twice()).toBeCloseTo(6, 12);
});

test('an entry for a given that no sheet has is kept and harms nothing', () => {
  const stray = withEntry(NEW_JOB, '99-gone', 'width', { text: '4' });
  const { desk, twice } = create(stray);
  expect(desk.job()).toBe(stray);
  expect(twice()).toBeCloseTo(6, 12);
});
