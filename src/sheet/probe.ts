import type { Memory } from '../language/memory.ts';
import type { Book } from './book.ts';
import { dependentsOf } from './dependents.ts';
import { copyFrame, type Frame } from './frame.ts';
import { solve } from './solve.ts';
import { upstreamOf } from './upstream.ts';

/** Works some cells of a book again and again with other values for some givens. */
export interface Probe {
  /**
   * The results with these values (SI, in the order of the givens): one number a quantity, its
   * elements for a list; NaN, or no element, where there is no value.
   */
  at(values: readonly number[]): number[];
  /** The memory as it stands with these values; overwritten by the next call. */
  memoryAt(values: readonly number[]): Memory;
  /** Each result's own numbers, in the order in which the results were asked for. */
  eachAt(values: readonly number[]): readonly (readonly number[])[];
}

/**
 * Prepares a probe. The frame itself stays as it is: the probe works on a copy, and only the cells
 * that lie between the givens and the results.
 */
export function createProbe(
  book: Book,
  frame: Frame,
  givens: readonly number[],
  results: readonly number[],
): Probe {
  const scratch = copyFrame(frame);
  const { numbers, others, blanks } = scratch.memory;
  const path = pathBetween(book, givens, results);
  for (const given of givens) blanks[given] = 0;

  function memoryAt(values: readonly number[]): Memory {
    for (let i = 0; i < givens.length; i += 1) numbers[givens[i]!] = values[i]!;
    solve(book, scratch, path);
    return scratch.memory;
  }

  function eachAt(values: readonly number[]): number[][] {
    memoryAt(values);
    return results.map((index) => {
      const isList = book.cells[index]!.kind?.type === 'list';
      if (isList) return Array.from((others[index] as Float64Array | undefined) ?? []);
      return [numbers[index]!];
    });
  }

  return { memoryAt, eachAt, at: (values) => eachAt(values).flat() };
}

/** The cells to be worked again, in order: those that hang on a given and that a result needs. */
export function pathBetween(
  book: Book,
  givens: readonly number[],
  results: readonly number[],
): readonly number[] {
  const paths = pathsOf(book);
  const key = `${givens.join()}>${results.join()}`;
  const known = paths.get(key);
  if (known !== undefined) return known;
  const path = findPath(book, givens, results);
  if (paths.size >= MOST_PATHS) paths.clear();
  paths.set(key, path);
  return path;
}

/** Paths are asked for again and again while a page is open, and never change: a book's are kept. */
const PATHS = new WeakMap<Book, Map<string, readonly number[]>>();
const MOST_PATHS = 5000;

function pathsOf(book: Book): Map<string, readonly number[]> {
  const paths = PATHS.get(book) ?? new Map<string, readonly number[]>();
  PATHS.set(book, paths);
  return paths;
}

function findPath(
  book: Book,
  givens: readonly number[],
  results: readonly number[],
): readonly number[] {
  const dependents = dependentsOf(book);
  const moved = new Set(givens.flatMap((given) => [...dependents(given)]));
  const needed = upstreamOf(book.cells, results);
  const fixed = new Set(givens);
  return book.order.filter((index) => moved.has(index) && needed.has(index) && !fixed.has(index));
}
