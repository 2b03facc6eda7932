import { expect, test, vi } from 'vitest';
import { h } from '../../src/page/element.ts';
import { textOf } from './test-desk.ts';

test('the entry of the page opens the sheets of the house', async () => {
  document.body.replaceChildren(h('div', { id: 'layshaft-page' }));
  await import('../../src/page/main.ts');
  await vi.waitFor(() => expect(textOf(document.querySelector('h1'))).toBe('20 Gearing'));
  expect(document.querySelectorAll('.stop').length).toBeGreaterThan(2);
  expect(document.querySelector('.problems, .trouble')).toBeNull();
});
