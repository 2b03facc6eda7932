import { expect, test } from 'vitest';
import { h } from '../../src/page/element.ts';
import { reveal } from '../../src/page/reveal.ts';

test('a cell far down is brought into view and has the focus', () => {
  const spacer = h('div');
  spacer.style.height = '5000px';
  const cell = h('div', { tabindex: -1 }, 'gap');
  document.body.replaceChildren(spacer, cell);
  reveal(cell);
  expect(document.activeElement).toBe(cell);
  expect(cell.getBoundingClientRect().top).toBeLessThan(innerHeight);
});

test('a cell that is not there is passed over', () => {
  document.body.replaceChildren();
  expect(() => reveal(document.getElementById('none'))).not.toThrow();
});
