import { fill, h, setAttribute } from './element.ts';

export interface EntryFieldOptions {
  /** Of the input; the label and the notes refer to it. */
  readonly id: string;
  /** Ids of what describes the field: how to measure, what was understood. */
  readonly describedBy: readonly string[];
  /** Words are typed from the left, figures stand at the right. */
  readonly words: boolean;
  /** Called when a changed text is committed: by Enter or by leaving. */
  commit(text: string): void;
}

export interface ShownEntry {
  readonly text: string;
  /** The unit in which a bare number is taken; '' for plain numbers and words. */
  readonly unit: string;
  /** What is wrong with the entry, as a sentence. */
  readonly error: string | undefined;
}

export interface EntryField {
  readonly element: HTMLElement;
  readonly input: HTMLInputElement;
  /** Stands under the field; empty while nothing is wrong. */
  readonly error: HTMLElement;
  /** Mutates the field. A text that is being typed is not touched unless something was committed. */
  show(entry: ShownEntry): void;
}

/**
 * A field for what a person measures. It is a text field: a field for numbers turns `3 1/8` into 318.
 * Enter or leaving commits, Escape brings back what was there.
 */
export function createEntryField(options: EntryFieldOptions): EntryField {
  const errorId = `${options.id}-error`;
  const error = h('p', { class: 'error', id: errorId, hidden: true });
  const unit = h('span', { class: 'unit' });
  const onPaper = h('span', { class: 'print-only', 'aria-hidden': 'true' });
  const input = h('input', {
    id: options.id,
    class: options.words && 'words',
    type: 'text',
    autocomplete: 'off',
    autocapitalize: 'off',
    spellcheck: options.words ? 'true' : 'false',
    on: { keydown: onKey, blur: commit },
  });
  let committed = '';

  function commit(): void {
    if (input.value === committed) return;
    committed = input.value;
    options.commit(committed);
  }

  function onKey(event: Event): void {
    const { key, isComposing } = event as KeyboardEvent;
    if (key === 'Enter' && !isComposing) commit();
    if (key === 'Escape') input.value = committed;
  }

  function show(entry: ShownEntry): void {
    const typing = document.activeElement === input && input.value !== committed;
    if (!typing && input.value !== entry.text) input.value = entry.text;
    committed = entry.text;
    unit.textContent = entry.unit;
    onPaper.textContent = entry.text;
    showError(entry.error);
  }

  function showError(sentence: string | undefined): void {
    const wrong = sentence !== undefined;
    error.hidden = !wrong;
    fill(error, wrong && h('b', {}, 'Error: '), sentence);
    setAttribute(input, 'aria-invalid', wrong ? 'true' : undefined);
    const described = wrong ? [errorId, ...options.describedBy] : options.describedBy;
    setAttribute(input, 'aria-describedby', described.join(' ') || undefined);
  }

  return { element: h('div', { class: 'entry' }, input, onPaper, unit), input, error, show };
}
