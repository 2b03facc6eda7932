import { expect, test } from 'vitest';
import { fill, h, inNamespace, MATHML, setAttribute } from '../../src/page/element.ts';

test('text goes in as text, never as markup', () => {
  const element = h('p', {}, '<img src=x onerror=alert(1)>');
  expect(element.children).toHaveLength(0);
  expect(element.textContent).toBe('<img src=x onerror=alert(1)>');
});

test('true sets an empty attribute, false and undefined leave it out', () => {
  const element = h('input', { required: true, disabled: false, title: undefined, min: 0 });
  expect(element.outerHTML).toBe('<input required="" min="0">');
});

test('listeners hear', () => {
  let heard = 0;
  const button = h('button', { on: { click: () => heard++ } });
  button.click();
  expect(heard).toBe(1);
});

test('an absent child is left out', () => {
  expect(h('p', {}, 'a', undefined, false, h('b', {}, 'c')).textContent).toBe('ac');
});

test('a formula stands in its own namespace', () => {
  expect(inNamespace(MATHML, 'mi', { mathvariant: 'normal' }, 'x').namespaceURI).toBe(MATHML);
});

test('filling lets go of what was there', () => {
  const element = h('p', {}, 'old');
  fill(element, 'new', undefined);
  expect(element.textContent).toBe('new');
});

test('an attribute set to undefined goes', () => {
  const element = h('p', { id: 'a' });
  setAttribute(element, 'id', undefined);
  setAttribute(element, 'class', 'b');
  expect(element.outerHTML).toBe('<p class="b"></p>');
});
