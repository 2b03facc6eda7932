import { parse } from 'opentype.js/dist/opentype.mjs';
import { describe, expect, test } from 'vitest';
import type { Typeface } from '../../src/export/typeface.ts';
import { loadTestTools } from './tools.ts';

const { typeface } = await loadTestTools();
const STYLE = { size: 100, bold: false } as const;

describe('letters as shapes', () => {
  test('figures are all of one width, so that columns stand', () => {
    const widths = [...'0123456789'].map((figure) => typeface.advance(figure, STYLE));
    expect(new Set(widths).size).toBe(1);
  });

  test('every character that drawings use has a shape, and no number in it is broken', () => {
    for (const character of 'Aaz09±°≈≤≥×·⁄−–’“½⅛²³πµ') {
      const path = typeface.outline(character, STYLE, 0, 0);
      expect(path, character).toMatch(/^M[-\d. MLCQZ]+Z$/);
    }
  });

  test('a blank has room and no shape', () => {
    expect(typeface.outline(' ', STYLE, 0, 0)).toBe('');
    expect(typeface.advance(' ', STYLE)).toBeGreaterThan(10);
  });

  test('bold is another shape', () => {
    expect(typeface.outline('A', { ...STYLE, bold: true }, 0, 0)).not.toBe(
      typeface.outline('A', STYLE, 0, 0),
    );
  });

  test('stands where it is told', () => {
    const shifted = typeface.outline('l', STYLE, 50, 20);
    expect(firstPoint(shifted)[0]! - firstPoint(typeface.outline('l', STYLE, 0, 0))[0]!).toBe(50);
  });
});

describe('a font with some characters alone', () => {
  test('is read by an independent reader of fonts, with the same widths', () => {
    const font = parse(copy(typeface.subset(new Set('12 in±≈'), false)));
    for (const character of '12 in±≈') {
      expect(font.charToGlyphIndex(character), character).toBeGreaterThan(0);
      expect(font.getAdvanceWidth(character, 100)).toBeCloseTo(
        typeface.advance(character, STYLE),
        1,
      );
    }
  });

  test('has no others', () => {
    expect(parse(copy(typeface.subset(new Set('1'), false))).charToGlyphIndex('2')).toBe(0);
  });
});

function copy(bytes: ReturnType<Typeface['subset']>): ArrayBuffer {
  return bytes.slice().buffer as ArrayBuffer;
}

function firstPoint(path: string): readonly number[] {
  return /^M([-\d.]+) ([-\d.]+)/.exec(path)!.slice(1).map(Number);
}
