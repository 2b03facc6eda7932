import fc from 'fast-check';
import { DOMParser } from 'linkedom';
import { describe, expect, test } from 'vitest';
import {
  escapeXml,
  formatSvgTree,
  listSvgTree,
  mapSvgTree,
  readSvgTree,
  type SvgTree,
} from '../../src/export/svg-tree.ts';

function read(xml: string): SvgTree {
  const document = new DOMParser().parseFromString(xml, 'image/svg+xml');
  return readSvgTree(document.documentElement as unknown as Element);
}

describe('a drawing apart from its document', () => {
  test('keeps elements, attributes and texts in their order', () => {
    expect(read('<svg width="3"><g><text x="1">a</text></g><path d="M0 0"/></svg>')).toEqual({
      name: 'svg',
      attributes: { width: '3' },
      children: [
        {
          name: 'g',
          attributes: {},
          children: [{ name: 'text', attributes: { x: '1' }, children: ['a'] }],
        },
        { name: 'path', attributes: { d: 'M0 0' }, children: [] },
      ],
    });
  });

  test('is written with its attributes in the order of the alphabet', () => {
    expect(formatSvgTree(read('<svg width="3" height="2"/>'))).toBe('<svg height="2" width="3"/>');
  });

  test('is changed from the leaves up', () => {
    const names: string[] = [];
    mapSvgTree(read('<svg><g><path/></g></svg>'), (each) => {
      names.push(each.name);
      return each;
    });
    expect(names).toEqual(['path', 'g', 'svg']);
    expect(listSvgTree(read('<svg><g><path/></g></svg>')).map(({ name }) => name)).toEqual([
      'svg',
      'g',
      'path',
    ]);
  });
});

describe('text for XML', () => {
  test('has its marks escaped', () => {
    expect(escapeXml('<a href="x">&</a>')).toBe('&lt;a href=&quot;x&quot;&gt;&amp;&lt;/a&gt;');
  });

  test('loses what XML cannot hold', () => {
    expect(escapeXml('a\u0000b\u000bc\uffff')).toBe('abc');
  });

  test('comes back from an independent reader as it was', () => {
    const printable = fc
      .string({ unit: 'grapheme' })
      .map((text) => text.replaceAll(/\p{Cc}/gu, ''));
    fc.assert(
      fc.property(printable, (text) => {
        const leaf: SvgTree = { name: 'text', attributes: { label: text }, children: [`.${text}`] };
        const found = read(formatSvgTree({ name: 'svg', attributes: {}, children: [leaf] }));
        const [inner] = found.children as readonly SvgTree[];
        expect(inner!.attributes).toEqual(leaf.attributes);
        // A reader may hand a text over in pieces.
        expect(inner!.children.join('')).toBe(leaf.children[0]);
      }),
    );
  });
});
