import { expect, test, vi } from 'vitest';
import { h } from '../../src/page/element.ts';
import { createLazy } from '../../src/page/lazy.ts';

function open(load: Parameters<typeof createLazy>[1]) {
  const lazy = createLazy('More', load);
  document.body.replaceChildren(lazy.element);
  return lazy;
}

test('nothing is loaded until it is opened, and then once', async () => {
  const refresh = vi.fn();
  const load = vi.fn(async () => ({ element: h('p', {}, 'here'), cells: [], refresh }));
  const { element, refresh: follow } = open(load);
  follow();
  expect(load).not.toHaveBeenCalled();
  element.open = true;
  await vi.waitFor(() => expect(element.textContent).toContain('here'));
  element.open = false;
  follow();
  expect(refresh).not.toHaveBeenCalled();
  element.open = true;
  await vi.waitFor(() => expect(refresh).toHaveBeenCalled());
  expect(load).toHaveBeenCalledTimes(1);
});

test('what cannot be loaded says so', async () => {
  const { element } = open(() => Promise.reject(new Error('offline')));
  element.open = true;
  await vi.waitFor(() => expect(element.textContent).toMatch(/could not be loaded/));
});
