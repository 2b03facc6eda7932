import { expect, test } from 'vitest';
import { createTroubleBar } from '../../src/page/trouble-bar.ts';

test('trouble is an alert that stays until it is over', () => {
  const bar = createTroubleBar();
  expect(bar.element.getAttribute('role')).toBe('alert');
  bar.show('Not saved.');
  const shown = bar.element.firstChild;
  bar.show('Not saved.');
  expect(bar.element.firstChild).toBe(shown);
  bar.show(undefined);
  expect(bar.element.textContent).toBe('');
});
