import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Book, linkBook } from '../src/sheet/book.ts';
import { createFrame } from '../src/sheet/create-frame.ts';
import { dependentsOf } from '../src/sheet/dependents.ts';
import { readSheet } from '../src/sheet/read-sheet.ts';
import { solve } from '../src/sheet/solve.ts';
import { measureFrame } from './frame.ts';
import { fitExponent } from './growth.ts';
import { measure } from './measure.ts';
import { alone, atMost, growth, type Row } from './table.ts';

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

/** The whole job: all of it, the change that moves most, and how both grow. */
export async function benchJob(): Promise<readonly Row[]> {
  const works = COPIES.map((copies) => ({ copies, ...prepare(openJob(copies)) }));
  const medians = measure(
    works.map(({ copies, solveAll }) => ({ name: `${copies}`, work: solveAll })),
    { rounds: 40 },
  );
  const points = works.map(({ copies, size }) => [size, medians.get(`${copies}`)!] as const);
  const [{ size, change, moved }] = works as [(typeof works)[number]];
  const changed = measure([{ name: 'change', work: change }], { rounds: 30 }).get('change')!;
  return [
    alone(`full job: solve, all ${size} values`, points[0]![1]),
    growth('full job: exponent of growth', fitExponent(points), 1.1),
    atMost(
      `full job: the change that moves most (${moved} values), beside one frame`,
      changed,
      await measureFrame(),
      1,
    ),
  ];
}

function prepare(book: Book) {
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
    solveAll: () => solve(book, frame),
    change: () => solve(book, frame, order),
  };
}
