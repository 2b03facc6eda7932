import { expect, test } from 'vitest';
import { SVG } from '../../src/page/element.ts';
import { createIcon } from '../../src/page/icon.ts';

test('an icon is for the eye alone', () => {
  const icon = createIcon('undo');
  expect(icon.namespaceURI).toBe(SVG);
  expect(icon.getAttribute('aria-hidden')).toBe('true');
  expect(icon.querySelector('path')?.getAttribute('d')).toMatch(/^M/);
});
