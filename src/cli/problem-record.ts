import type { Problem } from '../language/problem.ts';
import { formatPlace } from '../sheet/places.ts';

/** A problem as it is printed: all texts, '' where there is nothing to say. */
export interface ProblemRecord {
  readonly code: string;
  readonly message: string;
  /** Name of the cell that it belongs to. */
  readonly cell: string;
  /** `file:line:column`. */
  readonly place: string;
}

export function recordProblem(problem: Problem, cell = problem.cell ?? ''): ProblemRecord {
  const { code, message, place } = problem;
  return { code, message, cell, place: place === undefined ? '' : formatPlace(place) };
}

/** Each fault of a place once, though several cells may suffer from it. */
export function uniqueProblems(records: readonly ProblemRecord[]): readonly ProblemRecord[] {
  const seen = new Set<string>();
  return records.filter(({ code, place, message }) => {
    const key = [code, place, message].join('\n');
    return !seen.has(key) && seen.add(key);
  });
}

/** A problem as a line for people and editors: `file:line:column: message`. */
export function formatProblem({ message, place, cell }: ProblemRecord): string {
  if (place !== '') return `${place}: ${message}`;
  return cell === '' ? message : `${cell}: ${message}`;
}
