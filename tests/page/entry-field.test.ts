import { beforeEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { h } from '../../src/page/element.ts';
import { createEntryField, type EntryField } from '../../src/page/entry-field.ts';

let committed: string[];
let field: EntryField;

beforeEach(() => {
  // A field that is taken off the page while it is typed in commits first.
  document.body.replaceChildren();
  committed = [];
  field = createEntryField({
    id: 'field',
    describedBy: ['how'],
    words: false,
    commit: (text) => committed.push(text),
  });
  field.show({ text: '3.212', unit: 'in', error: undefined });
  document.body.replaceChildren(field.element, field.error, h('button', {}, 'elsewhere'));
});

async function type(text: string): Promise<void> {
  await userEvent.clear(field.input);
  await userEvent.type(field.input, text);
}

test('it is a text field, which keeps a fraction as it was typed', async () => {
  await type('3 1/8{Enter}');
  expect(field.input.type).toBe('text');
  expect(committed).toEqual(['3 1/8']);
});

test('leaving the field commits', async () => {
  await type('25 thou');
  await userEvent.click(document.querySelector('button')!);
  expect(committed).toEqual(['25 thou']);
});

test('nothing is committed while typing', async () => {
  await type('3 1/8');
  expect(committed).toEqual([]);
});

test('leaving an unchanged field commits nothing', async () => {
  await userEvent.click(field.input);
  await userEvent.click(document.querySelector('button')!);
  expect(committed).toEqual([]);
});

test('Enter and then leaving commit once', async () => {
  await type('4{Enter}');
  await userEvent.click(document.querySelector('button')!);
  expect(committed).toEqual(['4']);
});

test('Escape brings back what was there', async () => {
  await type('nonsense{Escape}');
  expect(field.input.value).toBe('3.212');
  await userEvent.click(document.querySelector('button')!);
  expect(committed).toEqual([]);
});

test('an entry that cannot be read stays, with a sentence under it', () => {
  field.show({ text: 'abc', unit: 'in', error: 'no number in "abc"' });
  expect(field.input.value).toBe('abc');
  expect(field.error.textContent).toBe('Error: no number in "abc"');
  expect(field.input.getAttribute('aria-invalid')).toBe('true');
  expect(field.input.getAttribute('aria-describedby')).toBe('field-error how');
});

test('a mended entry takes its sentence away', () => {
  field.show({ text: 'abc', unit: 'in', error: 'no number' });
  field.show({ text: '3', unit: 'in', error: undefined });
  expect(field.error.hidden).toBe(true);
  expect(field.input.hasAttribute('aria-invalid')).toBe(false);
  expect(field.input.getAttribute('aria-describedby')).toBe('how');
});

test('what is being typed is not overwritten when the rest of the page is worked again', async () => {
  await type('4');
  field.show({ text: '3.212', unit: 'in', error: undefined });
  expect(field.input.value).toBe('4');
});

test('a hundred thousand characters are kept to the last', () => {
  const long = '9'.repeat(100_000);
  field.input.value = long;
  field.input.dispatchEvent(new FocusEvent('blur'));
  expect(committed.map((text) => text === long)).toEqual([true]);
});

test('on paper the entry is text', () => {
  expect(field.element.querySelector('.print-only')?.textContent).toBe('3.212');
});
