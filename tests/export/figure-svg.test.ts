import { DOMParser } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { createElement, createPen, createRoot } from '../../src/drawing/svg.ts';
import { figureSVG, type PrintOptions } from '../../src/export/figure-svg.ts';
import { loadTestTools } from './tools.ts';

const { document, typeface } = await loadTestTools();

/** A drawing of the page: with its variables, on its paper. */
function draw(width: number): Element {
  const options = { document, width, idPrefix: 'x' };
  const pen = createPen(options);
  const root = createRoot(pen, options, { title: 'T', description: 'D', width, height: width / 2 });
  root.append(
    createElement(pen, 'path', { d: 'M0 0H9', stroke: pen.inks.set, 'stroke-width': 0.3 }),
    createElement(pen, 'text', { x: 1, y: 12, 'font-size': 13 }, ['Gap']),
  );
  return root;
}

const print = (options: Partial<PrintOptions> = {}) =>
  figureSVG(
    draw,
    { title: 'Gap & more', description: 'What it shows' },
    { width: 90, colour: 'colour', lettering: 'outlines', ...options },
    typeface,
  );

describe('a figure as a file', () => {
  test('is well-formed, sized in mm, with its words inside', () => {
    const root = new DOMParser().parseFromString(print(), 'image/svg+xml').documentElement;
    expect([root.getAttribute('width'), root.getAttribute('height')]).toEqual(['90mm', '45mm']);
    expect(root.querySelector('title')!.textContent).toBe('Gap & more');
    expect(root.querySelector('desc')!.textContent).toBe('What it shows');
    expect(root.getAttribute('xmlns')).toBe('http://www.w3.org/2000/svg');
  });

  test('is drawn for its width', () => {
    expect(print({ width: 90 })).toContain('viewBox="0 0 437 218.5"');
    expect(print({ width: 190 })).toContain('viewBox="0 0 923 461.5"');
  });

  test('stands on white paper, in literal inks', () => {
    expect(print()).toContain('<rect fill="#ffffff" height="100%"');
    expect(print()).toContain('stroke="#0b5c6b"');
    expect(print()).not.toContain('var(');
  });

  test('in grey has no colour left', () => {
    for (const [, hex] of print({ colour: 'grey' }).matchAll(/"#([\da-f]{6})"/g)) {
      expect(hex).toMatch(/^(..)\1\1$/);
    }
  });

  test('has its lettering outlined, or its font inside', () => {
    expect(print()).not.toMatch(/<text|font-/);
    expect(print({ lettering: 'font' })).toMatch(/@font-face[\s\S]*<text/);
  });
});
