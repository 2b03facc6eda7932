import { expect, test } from 'vitest';
import { h, inNamespace, SVG } from '../../src/page/element.ts';
import { prefixIds } from '../../src/page/paper-ids.ts';

test('ids and what refers to them change together', () => {
  const clip = inNamespace(SVG, 'clipPath', { id: 'clip' });
  const bar = inNamespace(SVG, 'rect', { 'clip-path': 'url(#clip)', fill: 'url("#hatch")' });
  const use = inNamespace(SVG, 'use', { href: '#clip' });
  const drawing = inNamespace(SVG, 'svg', { 'aria-labelledby': 'title words' }, clip, bar, use);
  const label = h('label', { for: 'gap' }, 'Gap');
  const root = h('section', { id: 'root' }, label, drawing as SVGElement);
  prefixIds(root, 'p1-');
  expect(root.id).toBe('p1-root');
  expect(clip.id).toBe('p1-clip');
  expect(bar.getAttribute('clip-path')).toBe('url(#p1-clip)');
  expect(bar.getAttribute('fill')).toBe('url("#p1-hatch")');
  expect(use.getAttribute('href')).toBe('#p1-clip');
  expect(drawing.getAttribute('aria-labelledby')).toBe('p1-title p1-words');
  expect(label.htmlFor).toBe('p1-gap');
});

test('links to sheets, colours and classes stay as they are', () => {
  const link = h('a', { href: '#/20-gearing', class: 'id', style: 'color: rgb(1, 2, 3)' });
  const before = link.outerHTML;
  prefixIds(link, 'p1-');
  expect(link.outerHTML).toBe(before);
});
