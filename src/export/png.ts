import { zlibSync } from 'fflate';
import { MM_PER_INCH } from './print-size.ts';

/** Pixels of a picture, row by row, four bytes each: red, green, blue, opacity. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8Array;
}

export interface PngOptions {
  readonly dotsPerInch: number;
  readonly colour: 'colour' | 'grey';
  /** Latin 1 in the format; other letters are written in UTF-8. */
  readonly title: string;
  readonly description: string;
}

/**
 * An opaque picture as PNG, 8 bits a channel, with its density, so that it comes to its size in a
 * document, and its words.
 *
 * Source: ISO/IEC 15948, Portable Network Graphics; pHYs counts dots per metre.
 */
export function encodePNG(pixels: Pixels, options: PngOptions): Uint8Array {
  const { width, height } = pixels;
  const grey = options.colour === 'grey';
  const perMetre = Math.round((options.dotsPerInch * 1000) / MM_PER_INCH);
  const chunks = [
    chunk('IHDR', [...word(width), ...word(height), 8, grey ? 0 : 2, 0, 0, 0]),
    chunk('sRGB', [0]),
    chunk('pHYs', [...word(perMetre), ...word(perMetre), 1]),
    chunk('iTXt', textOf('Title', options.title)),
    chunk('iTXt', textOf('Description', options.description)),
    chunk('IDAT', zlibSync(filterRows(pixels, grey ? 1 : 3), { level: 6 })),
    chunk('IEND', []),
  ];
  return join([Uint8Array.from(SIGNATURE), ...chunks]);
}

const SIGNATURE = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

/** Each byte less the one above it (filter 2): most rows of a drawing are like the row above. */
function filterRows({ width, height, rgba }: Pixels, channels: 1 | 3): Uint8Array {
  const stride = width * channels;
  const rows = new Uint8Array(height * (stride + 1));
  for (let y = 0; y < height; y += 1) {
    rows[y * (stride + 1)] = 2;
    for (let i = 0; i < stride; i += 1) {
      const at = 4 * (y * width + Math.floor(i / channels)) + (i % channels);
      const above = y === 0 ? 0 : rgba[at - 4 * width]!;
      rows[y * (stride + 1) + 1 + i] = rgba[at]! - above;
    }
  }
  return rows;
}

function textOf(keyword: string, text: string): Uint8Array {
  const encode = new TextEncoder();
  const head = encode.encode(keyword);
  return join([head, Uint8Array.from([0, 0, 0, 0, 0]), encode.encode(text)]);
}

function chunk(type: string, data: ArrayLike<number>): Uint8Array {
  const body = join([new TextEncoder().encode(type), Uint8Array.from(data)]);
  return join([word(data.length), body, word(crc32(body))]);
}

function word(value: number): Uint8Array {
  return Uint8Array.from([24, 16, 8, 0].map((shift) => (value >>> shift) & 0xff));
}

const CRC = Uint32Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let bit = 0; bit < 8; bit += 1) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  return c;
});

/** The check sum of ISO 3309 over a chunk's type and data. */
function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) crc = CRC[(crc ^ byte) & 0xff]! ^ (crc >>> 8);
  return (crc ^ 0xffffffff) >>> 0;
}

function join(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
