import type { System } from '../units/unit.ts';
import { h } from './element.ts';

export interface SystemSwitch {
  readonly element: HTMLElement;
  /** Mutates the switch: shows the system that holds now. */
  show(system: System): void;
}

const CHOICES: readonly (readonly [System, string, string])[] = [
  ['inch-pound', 'inch-pound', 'in'],
  ['metric', 'metric', 'mm'],
];

/** One switch for the units of the whole page. */
export function createSystemSwitch(choose: (system: System) => void): SystemSwitch {
  const inputs = CHOICES.map(([system, long, short]) =>
    h('input', {
      type: 'radio',
      name: 'system',
      value: system,
      // Which of the two words is seen depends on the width of the page.
      'aria-label': `${long}, ${short}`,
      on: { change: () => choose(system) },
    }),
  );
  const labels = CHOICES.map(([, long, short], i) =>
    h(
      'label',
      {},
      inputs[i],
      h('span', { class: 'wide-only' }, long),
      h('span', { class: 'narrow-only', 'aria-hidden': 'true' }, short),
    ),
  );
  const legend = h('legend', { class: 'unseen' }, 'Units');
  return {
    element: h('fieldset', { class: 'switch' }, legend, ...labels),
    show(system) {
      for (const input of inputs) input.checked = input.value === system;
    },
  };
}
