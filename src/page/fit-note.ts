import type { Misfit, Stray } from '../job/fit.ts';
import { h } from './element.ts';

/** Says how a job stands to a sheet that is not as it was; undefined where there is nothing to say. */
export function createFitNote({ isGone, isChanged, strays }: Misfit): HTMLElement | undefined {
  const sentence = tell(isGone, isChanged, strays.length);
  if (sentence === undefined) return undefined;
  return h(
    'section',
    { class: 'problems fit', 'aria-label': 'What no longer fits' },
    h('p', {}, sentence),
    strays.length > 0 && h('ul', {}, ...strays.map(createStray)),
  );
}

function tell(isGone: boolean, isChanged: boolean, count: number): string | undefined {
  const kept = 'What was entered there is kept in the job:';
  if (isGone) return `This sheet is not here. ${kept}`;
  if (count > 0) {
    const since = isChanged ? 'This sheet has changed since the job was filled in. ' : '';
    return `${since}${count === 1 ? 'One thing has' : `${count} things have`} no place on it. ${kept}`;
  }
  if (!isChanged) return undefined;
  return 'This sheet has changed since the job was filled in. All that was entered still has its place: look whether it still means the same.';
}

function createStray({ what, name, text }: Stray): HTMLElement {
  return h('li', {}, `${what} `, h('bdi', {}, shorten(name)), ': ', h('bdi', {}, shorten(text)));
}

/** Names and texts come from files, and may be of any length. */
export function shorten(text: string, most = 120): string {
  return text.length <= most ? text : `${text.slice(0, most - 1)}…`;
}
