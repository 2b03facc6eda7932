import { inflateSync } from 'node:zlib';

/** A page of a PDF file as it comes from the browser that the tests run in. */
export interface PdfPage {
  /** In points. */
  readonly width: number;
  readonly height: number;
  /** What is lettered on it, in the order of drawing: the margins first. */
  readonly text: string;
}

/**
 * Reads the pages of a PDF 1.4 file: objects in the open, streams deflated, and beside each font a table
 * from its glyphs, of one byte or of two, to Unicode. Not a reader for other makers' files.
 */
export function readPdf(file: Uint8Array): readonly PdfPage[] {
  const objects = readObjects(Buffer.from(file).toString('latin1'));
  const find = (body: string, key: string) => objects.get(refersTo(body, key) ?? '') ?? '';
  const pages = [...objects.values()].filter((body) => /\/Type \/Page\b(?!s)/.test(body));
  return pages.map((page) => {
    const box = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(page)!;
    const fonts = new Map(
      [...page.matchAll(/\/(F\d+) (\d+) 0 R/g)].map(([, name, number]) => [
        name!,
        readToUnicode(inflate(find(objects.get(number!)!, 'ToUnicode'))),
      ]),
    );
    const text = readText(inflate(find(page, 'Contents')), fonts);
    return { width: Number(box[1]), height: Number(box[2]), text };
  });
}

/** Bodies by number. A stream may hold any bytes, so an object ends at the line that says so. */
function readObjects(file: string): ReadonlyMap<string, string> {
  const found = file.matchAll(/(?:^|\n)(\d+) 0 obj\n([\s\S]*?)\nendobj/g);
  return new Map([...found].map(([, number, body]) => [number!, body!]));
}

function refersTo(body: string, key: string): string | undefined {
  return new RegExp(`/${key} (\\d+) 0 R`).exec(body)?.[1];
}

function inflate(body: string): string {
  const from = /stream\r?\n/.exec(body);
  if (from === null) return '';
  const bytes = Buffer.from(body.slice(from.index + from[0].length), 'latin1');
  return inflateSync(bytes).toString('latin1');
}

interface Glyphs {
  /** Hexadecimal digits that tell one glyph. */
  readonly digits: number;
  readonly text: ReadonlyMap<number, string>;
}

/** Glyph to text, from single entries and from runs of them. */
function readToUnicode(map: string): Glyphs {
  const digits = /begincodespacerange\n<(\w+)>/.exec(map)?.[1]?.length ?? 4;
  const glyphs = new Map<number, string>();
  for (const [, part] of map.matchAll(/beginbfchar\n([\s\S]*?)endbfchar/g)) {
    for (const [, glyph, text] of part!.matchAll(/<(\w+)> <(\w+)>/g)) {
      glyphs.set(Number.parseInt(glyph!, 16), fromHex(text!));
    }
  }
  for (const [, part] of map.matchAll(/beginbfrange\n([\s\S]*?)endbfrange/g)) {
    for (const [, first, last, text] of part!.matchAll(/<(\w+)> <(\w+)> <(\w+)>/g)) {
      const [from, to, start] = [first!, last!, text!].map((hex) => Number.parseInt(hex, 16));
      for (let i = from!; i <= to!; i += 1) glyphs.set(i, String.fromCodePoint(start! + i - from!));
    }
  }
  return { digits, text: glyphs };
}

/** UTF-16, four digits a unit. */
function fromHex(hex: string): string {
  const units = hex.match(/.{4}/g) ?? [];
  return String.fromCharCode(...units.map((unit) => Number.parseInt(unit, 16)));
}

function readText(content: string, fonts: ReadonlyMap<string, Glyphs>): string {
  let font: Glyphs | undefined;
  let text = '';
  const marks = content.matchAll(/\/(F\d+) [\d.]+ Tf|<([0-9A-Fa-f]+)>|(\bET\b)/g);
  for (const [, name, glyphs, end] of marks) {
    if (name !== undefined) font = fonts.get(name);
    if (glyphs !== undefined) text += spell(glyphs, font);
    if (end !== undefined) text += '\n';
  }
  return text.replaceAll(/[\u00a0\u202f]/g, ' ');
}

function spell(hex: string, font: Glyphs | undefined): string {
  if (font === undefined) return '';
  const glyphs = hex.match(new RegExp(`.{${font.digits}}`, 'g')) ?? [];
  return glyphs.map((glyph) => font.text.get(Number.parseInt(glyph, 16)) ?? '').join('');
}
