import { expect, test, vi } from 'vitest';
import { MATHML } from '../../src/page/element.ts';
import { createFormula, createMath } from '../../src/page/math.ts';

const half = {
  tag: 'math',
  children: [
    {
      tag: 'mfrac',
      children: [
        { tag: 'mn', children: ['1'] },
        { tag: 'mn', attributes: { mathvariant: 'normal' }, children: ['2'] },
      ],
    },
  ],
};

test('a formula is MathML all the way down', () => {
  const math = createMath(half);
  expect([math, ...math.querySelectorAll('*')].every((node) => node.namespaceURI === MATHML)).toBe(
    true,
  );
  expect(math.outerHTML).toBe(
    '<math><mfrac><mn>1</mn><mn mathvariant="normal">2</mn></mfrac></math>',
  );
});

test('a long formula scrolls in a box that the keyboard reaches', async () => {
  const box = createFormula(half);
  box.style.width = '4px';
  box.style.overflowX = 'auto';
  document.body.replaceChildren(box);
  await vi.waitFor(() => expect(box.tabIndex).toBe(0));
  expect(box.getAttribute('aria-label')).toBe('Formula');
});
