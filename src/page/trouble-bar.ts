import { h } from './element.ts';

/** A button beside a sentence: what can be done about it. */
export interface Remedy {
  readonly label: string;
  act(): void;
}

export interface TroubleBar {
  readonly element: HTMLElement;
  /** Mutates the bar: a sentence stays until it no longer holds. */
  show(sentence: string | undefined, ...remedies: readonly Remedy[]): void;
}

/** What must not be missed, under the header: the job could not be read, or is not saved. */
export function createTroubleBar(): TroubleBar {
  const element = h('div', { role: 'alert' });
  let shown = '';
  return {
    element,
    show(sentence, ...remedies) {
      const asked = [sentence ?? '', ...remedies.map(({ label }) => label)].join('\n');
      if (shown === asked) return;
      shown = asked;
      element.replaceChildren(
        ...(sentence === undefined ? [] : [createTrouble(sentence, remedies)]),
      );
    },
  };
}

function createTrouble(sentence: string, remedies: readonly Remedy[]): HTMLElement {
  const buttons = remedies.map(({ label, act }) =>
    h('button', { type: 'button', on: { click: act } }, label),
  );
  return h('div', { class: 'trouble' }, h('p', {}, sentence), ...buttons);
}
