import { h } from './element.ts';

/** A line on paper to sign on, and the day. */
export function createSignature(words: string): HTMLElement {
  return h(
    'p',
    { class: 'signature print-only', 'aria-hidden': 'true' },
    h('span', {}, words),
    h('span', { class: 'short' }, 'Date'),
  );
}
