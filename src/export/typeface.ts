import { Font, Glyph, Path, parse } from 'opentype.js/dist/opentype.mjs';

/** Font files, WOFF or OpenType: regular and bold of the drawings, and symbols that both lack. */
export interface FontFiles {
  readonly regular: ArrayBuffer;
  readonly bold: ArrayBuffer;
  readonly symbols: ArrayBuffer;
}

/** Letters of the drawings as shapes. */
export interface Typeface {
  /** SVG path data of a line of text that starts at x on the baseline y. */
  outline(text: string, style: LetterStyle, x: number, y: number): string;
  /** Advance of a line of text, in the unit of the size. */
  advance(text: string, style: LetterStyle): number;
  /** A font with these characters alone, OpenType. */
  subset(characters: ReadonlySet<string>, bold: boolean): Uint8Array;
}

export interface LetterStyle {
  readonly size: number;
  readonly bold: boolean;
}

interface Letter {
  readonly glyph: Glyph;
  /** Units of the font it comes from in one em. */
  readonly em: number;
}

export function createTypeface(files: FontFiles): Typeface {
  const symbols = parse(files.symbols);
  const faces = { regular: createFace(parse(files.regular)), bold: createFace(parse(files.bold)) };
  const find = (character: string, bold: boolean): Letter => {
    const plain = character === '\u202f' || character === '\u2009' ? ' ' : character;
    const own = faces[bold ? 'bold' : 'regular'](plain);
    if (own !== undefined) return own;
    return { glyph: symbols.charToGlyph(plain), em: symbols.unitsPerEm };
  };
  const advanceOf = (text: string, { size, bold }: LetterStyle) =>
    lettersOf(text).reduce((sum, character) => {
      const { glyph, em } = find(character, bold);
      return sum + ((glyph.advanceWidth ?? 0) * size) / em;
    }, 0);
  return {
    advance: advanceOf,
    outline(text, style, x, y) {
      let at = x;
      return lettersOf(text)
        .map((character) => {
          const { glyph } = find(character, style.bold);
          const path = formatPath(glyph.getPath(at, y, style.size));
          at += advanceOf(character, style);
          return path;
        })
        .join('');
    },
    subset: (characters, bold) => createSubset(characters, (each) => find(each, bold), bold),
  };
}

/** Part of the library that its types leave out: glyphs that a feature puts in place of others. */
interface Substitution {
  getSingle(feature: string): readonly { readonly sub: number; readonly by: number }[];
}

/**
 * Path data to a hundredth, each outline closed; the library's own leaves them open, and writes what
 * cannot be read where a number is tiny.
 */
function formatPath({ commands }: Path): string {
  const at = (...numbers: readonly number[]) =>
    numbers.map((number) => String(Math.round(number * 100) / 100 + 0)).join(' ');
  const steps = commands.map((command) => {
    switch (command.type) {
      case 'M':
        return `ZM${at(command.x, command.y)}`;
      case 'L':
        return `L${at(command.x, command.y)}`;
      case 'C':
        return `C${at(command.x1, command.y1, command.x2, command.y2, command.x, command.y)}`;
      case 'Q':
        return `Q${at(command.x1, command.y1, command.x, command.y)}`;
      default:
        return '';
    }
  });
  return steps.length === 0 ? '' : `${steps.join('').slice(1)}Z`;
}

/** Part of the library that its types leave out: glyphs that a feature puts in place of others. */
interface Substitution {
  getSingle(feature: string): readonly { readonly sub: number; readonly by: number }[];
}

type Face = (character: string) => Letter | undefined;

/** Figures are those of one width, so that columns of numbers stand. */
function createFace(font: Font): Face {
  const substitution = font.substitution as unknown as Substitution;
  const tabular = new Map(substitution.getSingle('tnum').map(({ sub, by }) => [sub, by]));
  return (character) => {
    const index = font.charToGlyphIndex(character);
    if (index === 0) return undefined;
    return { glyph: font.glyphs.get(tabular.get(index) ?? index), em: font.unitsPerEm };
  };
}

/** Characters, in the order in which they are written; a mark that joins stays a letter of its own. */
function lettersOf(text: string): readonly string[] {
  return [...text.normalize('NFC')];
}

const EM = 1000;

function createSubset(
  characters: ReadonlySet<string>,
  find: (character: string) => Letter,
  bold: boolean,
): Uint8Array {
  const glyphs = [...characters].sort().map((character) => {
    const { glyph, em } = find(character);
    const code = character.codePointAt(0)!;
    return new Glyph({
      name: `u${code.toString(16)}`,
      unicode: code,
      advanceWidth: Math.round(((glyph.advanceWidth ?? 0) * EM) / em),
      path: scalePath(glyph.path, EM / em),
    });
  });
  const missing = new Glyph({ name: '.notdef', advanceWidth: EM / 2, path: new Path() });
  const font = new Font({
    familyName: 'Layshaft Figures',
    styleName: bold ? 'Bold' : 'Regular',
    unitsPerEm: EM,
    ascender: 950,
    descender: -290,
    glyphs: [missing, ...glyphs],
  });
  return new Uint8Array(font.toArrayBuffer());
}

/** The same outline in other units; letters have y upwards, so nothing is turned over. */
function scalePath(path: Path, factor: number): Path {
  const scaled = new Path();
  scaled.commands = path.commands.map((command) =>
    Object.fromEntries(
      Object.entries(command).map(([key, value]) => [
        key,
        typeof value === 'number' ? value * factor : value,
      ]),
    ),
  ) as typeof path.commands;
  return scaled;
}
