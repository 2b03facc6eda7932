import type { Place, Problem } from '../language/problem.ts';

/** Finds line and column of an offset into one file. */
export type Places = (offset: number) => Place;

/** Makes the finder for one file; each look-up bisects the starts of its lines. */
export function createPlaces(source: string, file: string): Places {
  const starts = [0];
  for (let i = source.indexOf('\n'); i >= 0; i = source.indexOf('\n', i + 1)) starts.push(i + 1);
  return (offset) => {
    let low = 0;
    let high = starts.length;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (starts[middle]! <= offset) low = middle;
      else high = middle;
    }
    return { file, line: low + 1, column: offset - starts[low]! + 1 };
  };
}

/** A place as people and editors read it: `notebooks/20-gearing.md:12:3`. */
export function formatPlace({ file, line, column }: Place): string {
  return `${file}:${line}:${column}`;
}

/** The problem with its place and, where it belongs to one, its cell. */
export function placeProblem(problem: Problem, places: Places, cell?: string): Problem {
  return {
    ...problem,
    place: problem.place ?? places(problem.from),
    ...(cell === undefined ? {} : { cell }),
  };
}
