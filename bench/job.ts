import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Book, linkBook } from '../src/sheet/book.ts';
import { createFrame } from '../src/sheet/create-frame.ts';
import { dependentsOf } from '../src/sheet/dependents.ts';
import { readSheet } from '../src/sheet/read-sheet.ts';
import { solve } from '../src/sheet/solve.ts';
import { measureFrame } from './frame.ts';
import { benchGrowth } from './growing.ts';
import { measure } from './measure.ts';
import { atMost, type Row } from './table.ts';

const FOLDER = fileURLToPath(new URL('../notebooks', import.meta.url));
const NAMES = readdirSync(FOLDER)
  .filter((file) => file.endsWith('.md'))
  .map((file) => file.slice(0, -3));
/** How often the whole job stands in the book whose growth is measured. */
const COPIES = [1, 3, 10] as const;

/** All the project's sheets in one book; several times over, each copy carrying values of its own. */
export function openJob(copies = 1): Book {
  const numbers = Array.from({ length: copies }, (_, i) => i);
  return linkBook(numbers.flatMap((copy) => NAMES.map((name) => openCopy(name, copy))));
}

function openCopy(name: string, copy: number) {
  const text = readFileSync(`${FOLDER}/${name}.md`, 'utf8');
  if (copy === 0) return readSheet(text, `${name}.md`);
  const renamed = NAMES.reduce((all, each) => all.replaceAll(each, `${each}-${copy}`), text);
  return readSheet(renamed, `${name}-${copy}.md`);
}

/** The whole job: the change that moves most, and how all of it grows. */
export async function benchJob(): Promise<readonly Row[]> {
  const { size, moved, change } = prepareChange(openJob());
  const changed = measure([{ name: 'change', work: change }], { rounds: 30 }).get('change')!;
  return [
    ...benchGrowth({
      what: `full job of ${size} values: solve`,
      sizes: COPIES,
      of: 'times over',
      work: prepareSolve,
      bar: 1.1,
      rounds: 20,
      openings: 3,
    }),
    atMost(
      `full job: the change that moves most (${moved} values), beside one frame`,
      changed,
      await measureFrame(),
      1,
    ),
  ];
}

function prepareSolve(copies: number): () => void {
  const book = openJob(copies);
  const frame = createFrame(book);
  return () => solve(book, frame);
}

function prepareChange(book: Book) {
  const frame = createFrame(book);
  solve(book, frame);
  const dependents = dependentsOf(book);
  const givens = book.cells.filter(({ role }) => role === 'given').map(({ index }) => index);
  const most = givens.reduce((a, b) => (dependents(b).size > dependents(a).size ? b : a));
  const hang = dependents(most);
  const order = book.order.filter((index) => hang.has(index));
  return {
    size: book.cells.length,
    moved: order.length,
    change: () => solve(book, frame, order),
  };
}
