import { h } from './element.ts';

/** A button with words on it. */
export function createButton(words: string, act: () => void): HTMLButtonElement {
  return h('button', { type: 'button', on: { click: act } }, words);
}
