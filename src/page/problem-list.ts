import type { Place, Problem } from '../language/problem.ts';
import { h } from './element.ts';

/** What is wrong in a sheet, each with its place in the file; undefined where nothing is. */
export function createProblemList(problems: readonly Problem[]): HTMLElement | undefined {
  if (problems.length === 0) return undefined;
  const count = problems.length === 1 ? 'One thing is' : `${problems.length} things are`;
  return h(
    'section',
    { class: 'problems', 'aria-label': 'Problems in this sheet' },
    h('p', {}, h('strong', {}, `${count} wrong in this sheet.`), ' The rest of it works.'),
    h('ul', {}, ...problems.map(createProblem)),
  );
}

function createProblem(problem: Problem): HTMLElement {
  const place = problem.place && h('span', { class: 'place' }, formatPlace(problem.place));
  return h('li', {}, place, problem.message);
}

/** `20-gearing.md, line 41, column 7` */
export function formatPlace(place: Place): string {
  return `${place.file}, line ${place.line}, column ${place.column}`;
}
