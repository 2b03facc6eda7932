import { parseHTML } from 'linkedom';
import { beforeAll, expect, test } from 'vitest';
import { drawChain } from '../../src/drawing/chain.ts';
import { CHAINS } from '../support/drawing-cases.ts';
import { findCut, findOverlaps, loadPlate, show } from '../support/drawn.ts';

beforeAll(loadPlate);

const WIDTHS = [240, 300, 390, 700, 1000];
const BEARING = CHAINS[0]![1];

test.each(CHAINS.flatMap(([name, data]) => WIDTHS.map((width) => [name, width, data] as const)))(
  '%s at %i px: nothing is cut and nothing overlaps',
  (_, width, data) => {
    const svg = show(drawChain(data, { document, width, idPrefix: 'c' }));
    expect(findCut(svg)).toEqual([]);
    expect(findOverlaps(svg)).toEqual([]);
  },
);

function ends(svg: SVGElement, part: string): readonly (readonly [number, number])[] {
  return [...svg.querySelectorAll(`[data-part="${part}"]`)].map((element) => [
    Number(element.getAttribute('data-from')),
    Number(element.getAttribute('data-to')),
  ]);
}

test.each([300, 1000])('at %i px each arrow ends where its length says', (width) => {
  const svg = drawChain(BEARING, { document, width, idPrefix: 'c' });
  const [terms, [total]] = [ends(svg, 'term'), ends(svg, 'total')];
  const scale = (terms[0]![1] - terms[0]![0]) / 3.212;
  const signed = [3.212, -0.25, -3.047, 0.25];
  terms.forEach(([from, to], i) => {
    expect(to - from).toBeCloseTo(signed[i]! * scale, 1);
    if (i > 0) expect(from).toBe(terms[i - 1]![1]);
  });
  expect(total![0]).toBe(terms[0]![0]);
  expect(total![1] - total![0]).toBeCloseTo(0.165 * scale, 1);
});

test('a negative sum ends left of where it starts', () => {
  const [total] = ends(drawChain(CHAINS[1]![1], { document, width: 700, idPrefix: 'c' }), 'total');
  expect(total![1]).toBeLessThan(total![0]);
});

test('a length that is only assumed is dashed', () => {
  const unknown = CHAINS.find(([name]) => name === 'one value not known')![1];
  const svg = drawChain(unknown, { document, width: 700, idPrefix: 'c' });
  const dashes = [...svg.querySelectorAll('[data-part="term"]')].map((term) =>
    term.hasAttribute('stroke-dasharray'),
  );
  expect(dashes).toEqual([false, true, false]);
});

test('the closing dimension has the colour of answers', () => {
  const svg = drawChain(BEARING, { document, width: 700, idPrefix: 'c' });
  expect(svg.querySelector('[data-part="total"]')?.getAttribute('stroke')).toContain('--set');
});

test('a terminal draws the same chain', () => {
  const { document: other } = parseHTML('<!doctype html><html><body></body></html>');
  const draw = (doc: Document) =>
    drawChain(BEARING, { document: doc, width: 500, idPrefix: 'c', standalone: true });
  const paths = (svg: SVGElement) =>
    [...svg.querySelectorAll('path')].map((path) => path.getAttribute('d'));
  expect(paths(draw(other as unknown as Document))).toEqual(paths(draw(document)));
});
