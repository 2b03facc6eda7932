import { h } from './element.ts';

/** How long the page must be still before it speaks, in milliseconds. */
export const STILLNESS = 700;

export interface Status {
  readonly element: HTMLElement;
  /** Tells what changed, once nothing has been told for a while; the last word wins. */
  tell(words: () => string | Promise<string>): void;
  dispose(): void;
}

/** The one polite region of the page: what a change did, for people who do not see it. */
export function createStatus(): Status {
  const element = h('p', { class: 'unseen', role: 'status', 'aria-live': 'polite' });
  let waiting: ReturnType<typeof setTimeout> | undefined;
  return {
    element,
    tell(words) {
      clearTimeout(waiting);
      const mine = setTimeout(async () => {
        const said = words();
        if (typeof said === 'string') element.textContent = said;
        else {
          const late = await said;
          if (waiting === mine) element.textContent = late;
        }
      }, STILLNESS);
      waiting = mine;
    },
    dispose() {
      clearTimeout(waiting);
      waiting = undefined;
    },
  };
}
