import { describe, expect, test } from 'vitest';
import { embedFont, encodeBase64, outlineTexts } from '../../src/export/lettering.ts';
import { listSvgTree, type SvgTree } from '../../src/export/svg-tree.ts';
import { loadTestTools } from './tools.ts';

const { typeface } = await loadTestTools();

const text = (
  attributes: Record<string, string>,
  ...children: readonly (SvgTree | string)[]
): SvgTree => ({
  name: 'text',
  attributes,
  children,
});
const svg = (attributes: Record<string, string>, ...children: readonly SvgTree[]): SvgTree => ({
  name: 'svg',
  attributes,
  children,
});

/** Left and right end of a path. */
function ends(tree: SvgTree): readonly [number, number] {
  const path = listSvgTree(tree).find(({ name }) => name === 'path')!;
  const numbers = [...path.attributes.d!.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x]) =>
    Number(x),
  );
  return [Math.min(...numbers), Math.max(...numbers)];
}

describe('texts as shapes', () => {
  test('leave no text and nothing that asks for a font', () => {
    const drawn = outlineTexts(
      svg({ 'font-family': 'X' }, text({ x: '5', y: '10', 'font-size': '13' }, 'Gap')),
      typeface,
    );
    expect(listSvgTree(drawn).map(({ name }) => name)).toEqual(['svg', 'path']);
    expect(JSON.stringify(drawn)).not.toContain('font-');
  });

  test('stand left, in the middle or right of their place', () => {
    const at = (anchor: string) =>
      ends(
        outlineTexts(
          svg({ 'font-size': '20' }, text({ x: '100', y: '0', 'text-anchor': anchor }, 'HHH')),
          typeface,
        ),
      );
    const width = typeface.advance('HHH', { size: 20, bold: false });
    expect(at('start')[0]).toBeCloseTo(at('end')[0] + width, 1);
    expect(at('start')[0]).toBeCloseTo(at('middle')[0] + width / 2, 1);
  });

  test('take size, weight and place from what they stand in', () => {
    const inner = outlineTexts(
      svg(
        { 'font-size': '20', 'text-anchor': 'end' },
        {
          name: 'g',
          attributes: { 'font-weight': '700' },
          children: [text({ x: '0' }, 'H')],
        },
      ),
      typeface,
    );
    const own = outlineTexts(
      svg({}, text({ x: '0', 'font-size': '20', 'font-weight': '700', 'text-anchor': 'end' }, 'H')),
      typeface,
    );
    expect(ends(inner)).toEqual(ends(own));
  });

  test('count em by their own size', () => {
    const em = outlineTexts(svg({}, text({ y: '0.5em', 'font-size': '20' }, 'H')), typeface);
    const px = outlineTexts(svg({}, text({ y: '10', 'font-size': '20' }, 'H')), typeface);
    expect(em).toEqual(px);
  });

  test('go on where a bold lead ends', () => {
    const lead: SvgTree = { name: 'tspan', attributes: { 'font-weight': '700' }, children: ['H'] };
    const drawn = outlineTexts(svg({ 'font-size': '20' }, text({ x: '0' }, lead, 'H')), typeface);
    const bold = typeface.advance('H', { size: 20, bold: true });
    expect(ends(drawn)[1]).toBeGreaterThan(bold);
  });

  test('keep what is no lettering: colour, halo, place', () => {
    const drawn = outlineTexts(
      svg({}, text({ fill: '#123456', stroke: '#ffffff', transform: 'translate(3,4)' }, 'H')),
      typeface,
    );
    expect((drawn.children[0] as SvgTree).attributes).toMatchObject({
      fill: '#123456',
      stroke: '#ffffff',
      transform: 'translate(3,4)',
    });
  });
});

describe('a font inside', () => {
  const words: SvgTree = { name: 'title', attributes: {}, children: ['T'] };
  const tree = svg({ 'font-family': 'Y' }, words, text({ 'font-weight': '700' }, 'Gap'));

  test('stands behind the title and before what is drawn', () => {
    const names = embedFont(tree, typeface).children.map((child) => (child as SvgTree).name);
    expect(names).toEqual(['title', 'style', 'text']);
  });

  test('is only of the weights that are used', () => {
    const style = embedFont(tree, typeface).children[1] as SvgTree;
    expect(style.children[0]).toContain('font-weight:700');
    expect(style.children[0]).not.toContain('font-weight:400');
  });

  test('is the family of the drawing', () => {
    expect(embedFont(tree, typeface).attributes['font-family']).toMatch(/^'Layshaft Figures'/);
  });
});

// RFC 4648, section 10.
test.each([
  ['', ''],
  ['f', 'Zg=='],
  ['fo', 'Zm8='],
  ['foobar', 'Zm9vYmFy'],
])('base 64 of "%s" is "%s"', (plain, encoded) => {
  expect(encodeBase64(new TextEncoder().encode(plain))).toBe(encoded);
});
