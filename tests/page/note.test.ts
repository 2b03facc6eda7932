import { expect, test } from 'vitest';
import { createNote } from '../../src/page/note.ts';

function make(start = '') {
  let note = start;
  const view = createNote('given width', {
    note: () => note,
    setNote: (text) => {
      note = text;
    },
  });
  document.body.replaceChildren(view.element);
  const field = view.element.querySelector('textarea')!;
  const summary = () => view.element.querySelector('summary')!.textContent;
  return {
    view,
    field,
    summary,
    note: () => note,
    set: (text: string) => {
      note = text;
    },
  };
}

test('a note is written, kept, and shown on paper', () => {
  const { view, field, summary, note } = make();
  expect(summary()).toBe('Add a note');
  field.value = 'Burr on the face.';
  field.dispatchEvent(new Event('change'));
  expect(note()).toBe('Burr on the face.');
  view.refresh();
  expect(summary()).toBe('Note');
  expect(view.element.querySelector('.print-only')?.textContent).toBe('Note: Burr on the face.');
});

test('a block with a note shows it open, and one without is quiet', () => {
  expect(make('Burr').view.element.querySelector('details')?.open).toBe(true);
  expect(make().view.element.querySelector('details')?.open).toBe(false);
});

test('a refresh does not take from under the hands what is being typed', () => {
  const { view, field, set } = make();
  view.element.querySelector('details')!.open = true;
  field.focus();
  field.value = 'half a sen';
  set('other');
  view.refresh();
  expect(field.value).toBe('half a sen');
});

test('the field is named by its block', () => {
  expect(make().field.ariaLabel).toBe('Note on given width');
});
