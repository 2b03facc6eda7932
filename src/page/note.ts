import { h } from './element.ts';
import type { View } from './view.ts';

export interface NoteHost {
  note(): string;
  setNote(text: string): void;
}

/** A note on a block, kept with the job: a quiet button until there is something to read. */
export function createNote(label: string, host: NoteHost): View {
  const summary = h('summary', {});
  const field = h('textarea', {
    rows: 3,
    'aria-label': `Note on ${label}`,
    on: { change: () => host.setNote(field.value) },
  });
  const onPaper = h('p', { class: 'print-only note-text' });
  const details = h('details', {}, summary, field);
  const element = h('div', { class: 'note' }, details, onPaper);

  function refresh(): void {
    const note = host.note();
    if (document.activeElement !== field) field.value = note;
    if (note !== '') details.open = true;
    summary.textContent = note === '' ? 'Add a note' : 'Note';
    element.classList.toggle('filled', note !== '');
    onPaper.textContent = note === '' ? '' : `Note: ${note}`;
  }

  refresh();
  return { element, cells: [], refresh };
}
