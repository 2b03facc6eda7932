import { expect, test } from 'vitest';
import { createLateDrive } from '../../src/page/late-drive.ts';
import { linkBook } from '../../src/sheet/book.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import { solve } from '../../src/sheet/solve.ts';

const SHEET = `
\`\`\`given
width = 3 in
other = 1 in
\`\`\`

\`\`\`work
twice = 2 * width as in
thrice = 3 * other as in
\`\`\`
`;

function create() {
  const book = linkBook([readSheet(SHEET, '10-sheet.md')]);
  const told: string[] = [];
  const drive = createLateDrive(book, (index) => told.push(book.cells[index]!.name));
  solve(book, drive.frame);
  const at = (name: string) => book.find('10-sheet', name)!.index;
  const inches = (name: string) => drive.frame.memory.numbers[at(name)]! / 0.0254;
  return { drive, told, at, inches };
}

test('a change before the runtime has come is worked all the same', async () => {
  const { drive, told, at, inches } = create();
  drive.enter(at('width'), { text: '5' });
  await Promise.resolve();
  expect(inches('twice')).toBeCloseTo(10, 12);
  expect(told.sort()).toEqual(['twice', 'width']);
});

test('a change after that is worked by the runtime, and only what hangs on it is told', async () => {
  const { drive, told, at, inches } = create();
  await drive.settled();
  expect(told).toEqual([]);
  drive.enter(at('width'), { text: '5' });
  await drive.settled();
  expect(inches('twice')).toBeCloseTo(10, 12);
  expect(inches('thrice')).toBeCloseTo(3, 12);
  expect(new Set(told)).toEqual(new Set(['width', 'twice']));
});

test('what was entered before stands when the runtime has come', async () => {
  const { drive, at, inches } = create();
  drive.enter(at('width'), { text: '5' });
  await drive.settled();
  expect(inches('twice')).toBeCloseTo(10, 12);
});

test('disposed before the runtime has come, it settles and starts nothing', async () => {
  const { drive } = create();
  drive.dispose();
  await expect(drive.settled()).resolves.toBeUndefined();
});
