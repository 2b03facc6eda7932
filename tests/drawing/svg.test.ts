import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import { createElement, createPen, createRoot, formatAttribute } from '../../src/drawing/svg.ts';

const WORDS = { title: 'Gap <in> & out', description: 'Plain words.', width: 300, height: 40 };

function draw(idPrefix: string, standalone = false, doc: Document = document): SVGElement {
  const options = { document: doc, width: 300, idPrefix, standalone };
  return createRoot(createPen(options), options, WORDS);
}

test('an element carries its attributes and children', () => {
  const child = createElement({ document }, 'path', { d: 'M0 0', stroke: undefined });
  const group = createElement({ document }, 'g', { x: 1.23456 }, [child, 'text']);
  expect(group.outerHTML).toBe('<g x="1.23"><path d="M0 0"></path>text</g>');
  expect(child.namespaceURI).toBe('http://www.w3.org/2000/svg');
});

test('a root is an image named by its title and described by its description', () => {
  const svg = draw('a');
  expect(svg.getAttribute('role')).toBe('img');
  expect(svg.querySelector(`#${svg.getAttribute('aria-labelledby')}`)?.textContent).toBe(
    WORDS.title,
  );
  expect(svg.querySelector(`#${svg.getAttribute('aria-describedby')}`)?.textContent).toBe(
    WORDS.description,
  );
});

test('two drawings with different prefixes share no id', () => {
  const ids = [draw('a'), draw('b')].flatMap((svg) =>
    [...svg.querySelectorAll('[id]')].map((element) => element.id),
  );
  expect(new Set(ids).size).toBe(4);
});

test('a drawing that stands alone is a file that an XML reader takes', () => {
  const { document: other } = parseHTML('<!doctype html><html><body></body></html>');
  for (const svg of [draw('a', true), draw('a', true, other as unknown as Document)]) {
    const text =
      svg.ownerDocument === document ? new XMLSerializer().serializeToString(svg) : svg.outerHTML;
    const read = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
    expect(read.tagName).toBe('svg');
    expect(read.namespaceURI).toBe('http://www.w3.org/2000/svg');
    expect(text).not.toContain('var(');
  }
});

test.each([
  [1.005, '1'],
  [-0.001, '0'],
  [12.346, '12.35'],
  ['as is', 'as is'],
])('the attribute %s is written %s', (value, text) => {
  expect(formatAttribute(value)).toBe(text);
});
