import { expect, test } from 'vitest';
import { h } from '../../src/page/element.ts';
import { createLater } from '../../src/page/later.ts';
import type { View } from '../../src/page/view.ts';

function createCounted() {
  const counts = { refreshed: 0, disposed: 0 };
  const view: View = {
    element: h('p', {}, 'here'),
    cells: [3],
    refresh() {
      counts.refreshed += 1;
    },
    dispose() {
      counts.disposed += 1;
    },
  };
  return { counts, view };
}

const soon = () => new Promise((resolve) => setTimeout(resolve));

test('the place is empty until what fills it has come', async () => {
  const { counts, view } = createCounted();
  const later = createLater(
    async () => view,
    (tool) => tool,
  );
  expect(later.element.textContent).toBe('');
  expect(later.cells).toEqual([]);
  later.refresh();
  await soon();
  expect(later.element.textContent).toBe('here');
  expect(later.cells).toEqual([3]);
  later.refresh();
  later.dispose?.();
  expect(counts).toEqual({ refreshed: 1, disposed: 1 });
});

test('nothing is made for a sheet that has been left', async () => {
  let made = 0;
  const { view } = createCounted();
  const later = createLater(
    async () => view,
    (tool) => {
      made += 1;
      return tool;
    },
  );
  later.dispose?.();
  await soon();
  expect(made).toBe(0);
});

test('what cannot be loaded says so in its place', async () => {
  const later = createLater(
    () => Promise.reject(new Error('offline')),
    () => createCounted().view,
  );
  await soon();
  expect(later.element.textContent).toMatch(/could not be loaded/);
});
