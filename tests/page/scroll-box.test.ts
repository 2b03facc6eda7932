import { expect, test, vi } from 'vitest';
import { h } from '../../src/page/element.ts';
import { createScrollBox } from '../../src/page/scroll-box.ts';

function createBox(width: string): HTMLElement {
  const content = h('div', {}, '3.212');
  content.style.width = width;
  const box = createScrollBox('wide', 'Table of sizes', content);
  box.style.overflowX = 'auto';
  box.style.width = '200px';
  document.body.replaceChildren(box);
  return box;
}

test('what is too wide can be scrolled by keyboard, and has a name', async () => {
  const box = createBox('400px');
  await vi.waitFor(() => expect(box.tabIndex).toBe(0));
  expect(box.getAttribute('aria-label')).toBe('Table of sizes');
  expect(box.getAttribute('role')).toBe('group');
});

test('what fits is no stop for the keyboard', async () => {
  const box = createBox('400px');
  await vi.waitFor(() => expect(box.tabIndex).toBe(0));
  box.style.width = '500px';
  await vi.waitFor(() => expect(box.tabIndex).toBe(-1));
  expect(box.hasAttribute('aria-label')).toBe(false);
});
