import { expect, test, vi } from 'vitest';
import { h } from '../../src/page/element.ts';
import { createNumberFold } from '../../src/page/number-fold.ts';

test('numbers are set out where they are unfolded, and not before', async () => {
  const redraw = vi.fn();
  const { element, show } = createNumberFold('Numbers of: Gap', redraw);
  document.body.append(element);
  const setOut = vi.fn(() => [h('table', {}), h('table', {})]);
  show(setOut);
  expect(setOut).not.toHaveBeenCalled();
  (element as HTMLDetailsElement).open = true;
  await vi.waitFor(() => expect(redraw).toHaveBeenCalled());
  show(setOut);
  expect(element.querySelectorAll('table')).toHaveLength(2);
  show(() => [h('table', {})]);
  expect(element.querySelectorAll('table')).toHaveLength(1);
  element.remove();
});
