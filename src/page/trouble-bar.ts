import { h } from './element.ts';

export interface TroubleBar {
  readonly element: HTMLElement;
  /** Mutates the bar: a sentence stays until it no longer holds. */
  show(sentence: string | undefined): void;
}

/** What must not be missed, under the header: the job could not be read, or is not saved. */
export function createTroubleBar(): TroubleBar {
  const element = h('div', { role: 'alert' });
  return {
    element,
    show(sentence) {
      if (element.textContent === (sentence ?? '')) return;
      element.replaceChildren(
        ...(sentence === undefined ? [] : [h('p', { class: 'trouble' }, sentence)]),
      );
    },
  };
}
