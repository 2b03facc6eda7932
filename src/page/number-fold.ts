import { fill, h } from './element.ts';
import { createScrollBox } from './scroll-box.ts';

/** The numbers of a figure, folded away under it. */
export interface NumberFold {
  readonly element: HTMLElement;
  /** Sets the numbers out where they are unfolded; where they are not, nobody waits for them. */
  show(setOut: () => readonly HTMLElement[]): void;
}

/**
 * @param label of the table, for those who do not see it under its figure
 * @param redraw called when it is folded or unfolded
 */
export function createNumberFold(label: string, redraw: () => void): NumberFold {
  const table = createScrollBox('wide', label);
  const element = h('details', { on: { toggle: redraw } }, h('summary', {}, 'The numbers'), table);
  return {
    element,
    show(setOut) {
      if (element.open) fill(table, ...setOut());
    },
  };
}
