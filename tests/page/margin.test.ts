import { expect, test } from 'vitest';
import { h } from '../../src/page/element.ts';
import { createMargin, createRow, sourceNote } from '../../src/page/margin.ts';

test('without notes there is no margin', () => {
  expect(createMargin([])).toBeUndefined();
  expect(createRow(h('p'), []).children).toHaveLength(1);
});

test('a note has a title and words', () => {
  const row = createRow(h('p'), sourceNote('common practice, no source'));
  expect(row.querySelector('.margin')?.textContent).toBe(
    'Where it comes fromcommon practice, no source',
  );
});

test('what has no source has no note', () => {
  expect(sourceNote(undefined)).toEqual([]);
});
