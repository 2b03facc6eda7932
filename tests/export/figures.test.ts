import { DOMParser } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { figureSVG } from '../../src/export/figure-svg.ts';
import { type Figure, listFigures, listTables, nameFile } from '../../src/export/figures.ts';
import { MM_PER_PX } from '../../src/export/print-size.ts';
import { listSvgTree, readSvgTree } from '../../src/export/svg-tree.ts';
import { createStanding } from '../../src/sheet/standing.ts';
import { openNotebooks, work } from '../support/notebooks.ts';
import { loadTestTools } from './tools.ts';

const { document, typeface } = await loadTestTools();
const BOOK = openNotebooks();
const STANDING = createStanding(BOOK, work(BOOK, '20-gearing').frame, { isEntered: () => false });
const FIGURES = BOOK.sheets.flatMap((sheet) => listFigures(STANDING, sheet));

const POINTS_PER_PX = (MM_PER_PX * 72) / 25.4;

function print(figure: Figure, width: number, lettering: 'outlines' | 'font'): string {
  const words = { title: figure.title, description: figure.alt };
  const draw = (px: number) => figure.draw(document, px);
  return figureSVG(draw, words, { width, colour: 'colour', lettering }, typeface);
}

describe('the figures of all sheets', () => {
  test('have names of their own', () => {
    expect(new Set(FIGURES.map(({ id }) => id)).size).toBe(FIGURES.length);
    for (const { id } of FIGURES) expect(id).toMatch(/^[a-z0-9-]+$/);
  });

  test('are as many as the sheets have charts, stacks, gauges and drawings', () => {
    const kinds = (kind: Figure['kind']) => FIGURES.filter((figure) => figure.kind === kind).length;
    expect(kinds('chart')).toBe(BOOK.charts.length);
    expect(kinds('drawing')).toBe(BOOK.drawings.length);
    expect(kinds('stack')).toBe(BOOK.cells.filter(({ role }) => role === 'stack').length);
  });

  test('say in their caption and in their alternative text something of their own', () => {
    for (const { caption, alt, title } of FIGURES) {
      expect(caption.startsWith(title) || caption.length > 10, title).toBe(true);
      expect(alt.length, title).toBeGreaterThan(20);
      expect(`${caption} ${alt}`).not.toMatch(/NaN|undefined|\?\s/);
    }
  });
});

describe.each(FIGURES.map((figure) => [figure.id, figure] as const))('%s', (_, figure) => {
  test('stands alone at 90 mm: lettering, lines, no variable', () => {
    const width = 90;
    const svg = print(figure, width, 'font');
    expect(svg).not.toMatch(/var\(|currentColor|light-dark|href=|url\((?!data:|#)/);
    const root = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement;
    const tree = readSvgTree(root as unknown as Element);
    expect(tree.attributes.width).toBe(`${width}mm`);
    for (const { attributes } of listSvgTree(tree)) {
      const size = Number(attributes['font-size'] ?? Number.POSITIVE_INFINITY);
      const line = Number(attributes['stroke-width'] ?? Number.POSITIVE_INFINITY);
      if (attributes['font-size'] !== '10') expect(size * POINTS_PER_PX).toBeGreaterThan(6.999);
      if (line > 0) expect(line * POINTS_PER_PX).toBeGreaterThan(0.4999);
    }
  });

  test('as outlines has no text left', () => {
    expect(print(figure, 190, 'outlines')).not.toMatch(/<text|<tspan|font-family|NaN/);
  });
});

test('a title becomes a file name that every system bears', () => {
  const sheet = BOOK.sheets.find(({ name }) => name === '20-gearing')!;
  expect(nameFile(sheet, 'chart', 'Ø 5" … Größe / CON')).toBe('20-chart-5-gro-e-con');
});

test('the write-up has its tables', () => {
  const sheet = BOOK.sheets.find(({ name }) => name === '140-write-up')!;
  expect(listTables(STANDING, sheet).map(({ title }) => title)).toContain('Gears');
});
