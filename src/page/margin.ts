import { type Child, h } from './element.ts';

export interface MarginNote {
  readonly title: string;
  readonly words: readonly Child[];
}

/** Notes that stand beside a block where there is room, and under it where there is not. */
export function createMargin(notes: readonly MarginNote[]): HTMLElement | undefined {
  if (notes.length === 0) return undefined;
  return h('div', { class: 'margin' }, ...notes.map(createNote));
}

/** A block's line with its note. */
export function createRow(line: HTMLElement, notes: readonly MarginNote[]): HTMLElement {
  return h('div', { class: 'row' }, line, createMargin(notes));
}

function createNote(note: MarginNote): HTMLElement {
  return h('div', {}, h('b', {}, note.title), h('p', {}, ...note.words));
}

export function sourceNote(source: string | undefined): readonly MarginNote[] {
  return source === undefined ? [] : [{ title: 'Where it comes from', words: [source] }];
}
