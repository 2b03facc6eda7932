import { expect, test } from 'vitest';
import { createFitNote, shorten } from '../../src/page/fit-note.ts';

const FITS = { sheet: 'a', isGone: false, isChanged: false, strays: [] };
const STRAY = { what: 'entry', name: 'width', text: '3 in' } as const;

test.each([
  [{ ...FITS, isGone: true, strays: [STRAY] }, /^This sheet is not here\..*entry width: 3 in$/],
  [{ ...FITS, isChanged: true }, /has changed since.*look whether it still means the same/],
  [
    { ...FITS, strays: [STRAY] },
    /^One thing has no place on it.*kept in the job:entry width: 3 in$/,
  ],
  [{ ...FITS, isChanged: true, strays: [STRAY, STRAY] }, /has changed since.*2 things have/],
])('%j is told', (misfit, words) => {
  expect(createFitNote(misfit)?.textContent).toMatch(words);
});

test('where all fits there is nothing to say', () => {
  expect(createFitNote(FITS)).toBeUndefined();
});

test('names of any length and direction stand in a line of their own direction', () => {
  const stray = { ...STRAY, name: '\u202e'.repeat(5000), text: 'x'.repeat(5000) };
  const note = createFitNote({ ...FITS, strays: [stray] })!;
  expect(note.querySelectorAll('bdi')).toHaveLength(2);
  expect(note.textContent!.length).toBeLessThan(500);
  expect(shorten('abcdef', 4)).toBe('abc…');
});
