import { expect, test } from 'vitest';
import { createCaution } from '../../src/page/caution.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import type { CautionBlock } from '../../src/sheet/sheet.ts';
import { textOf } from './test-desk.ts';

function show(words: string): HTMLElement {
  const source = ['```caution "Both wheels off the floor"', words, '```'].join('\n');
  const { parts } = readSheet(source, 'made.md');
  return createCaution(parts.find((part) => part.kind === 'caution') as CautionBlock);
}

test('a caution says that it is one, in words', () => {
  const element = show('Key *out*.');
  expect(textOf(element)).toBe('Caution Both wheels off the floorKey out.');
  expect(element.getAttribute('role')).toBe('note');
});

test('stress in a caution is stress, and no stars', () => {
  const element = show('Earth lead off **first**, on *last*.\n\nGoggles on.');
  expect(textOf(element.querySelectorAll('strong')[1])).toBe('first');
  expect(textOf(element.querySelector('em'))).toBe('last');
  expect(element.textContent).not.toContain('*');
  expect(element.querySelectorAll('p')).toHaveLength(3);
});

test('HTML in a caution is shown as the text that it is', () => {
  const element = show('<b onclick="x()">Hot</b>');
  expect(element.querySelector('b')).toBeNull();
  expect(element.textContent).toContain('<b onclick="x()">Hot</b>');
});
