import { PDFiumLibrary } from '@hyzyla/pdfium';

/** What lies on a page, in px of 1/96 in. */
export interface PrintPicture {
  readonly width: number;
  readonly height: number;
  /** Lightness as the eye has it, 0 black to 255 white, row by row. */
  readonly grey: Uint8Array;
}

/** Points to the inch, and px. */
const PX = 96 / 72;

/**
 * Draws the pages of a PDF file, by another program than the one that wrote it.
 *
 * @param fine px drawn for each px of the page
 */
export async function drawPages(file: Uint8Array, fine = 1): Promise<readonly PrintPicture[]> {
  const library = await PDFiumLibrary.init();
  try {
    const document = await library.loadDocument(file);
    const pages: PrintPicture[] = [];
    for (const page of document.pages()) {
      const { width, height, data } = await page.render({ scale: PX * fine, render: 'bitmap' });
      pages.push({ width, height, grey: toGrey(data) });
    }
    document.destroy();
    return pages;
  } finally {
    library.destroy();
  }
}

/** From four bytes a px: blue, green, red and how much they cover, on white. Source: Rec. 709, luma. */
function toGrey(data: Uint8Array): Uint8Array {
  const grey = new Uint8Array(data.length / 4);
  for (let i = 0; i < grey.length; i += 1) {
    const at = 4 * i;
    const light = 0.0722 * data[at]! + 0.7152 * data[at + 1]! + 0.2126 * data[at + 2]!;
    grey[i] = Math.round(255 - ((255 - light) * data[at + 3]!) / 255);
  }
  return grey;
}

/** A picture of the same kind from four bytes a px in the order of a PNG file. */
export function fromScreen(width: number, height: number, data: Uint8Array | Buffer): PrintPicture {
  const grey = new Uint8Array(width * height);
  for (let i = 0; i < grey.length; i += 1) {
    const at = 4 * i;
    grey[i] = Math.round(0.2126 * data[at]! + 0.7152 * data[at + 1]! + 0.0722 * data[at + 2]!);
  }
  return { width, height, grey };
}

/** Lighter than this is paper. */
const PAPER = 250;
/** Darker than this is ink, and not the softened edge of it. */
const INK = 200;

/** First and last row and column that are not paper; undefined on a bare page. */
export function findInked({ width, height, grey }: PrintPicture) {
  const inked = { left: width, right: -1, top: height, bottom: -1 };
  grey.forEach((light, i) => {
    if (light >= PAPER) return;
    const [x, y] = [i % width, Math.floor(i / width)];
    inked.left = Math.min(inked.left, x);
    inked.right = Math.max(inked.right, x);
    inked.top = Math.min(inked.top, y);
    inked.bottom = Math.max(inked.bottom, y);
  });
  return inked.right < 0 ? undefined : inked;
}

export function crop(
  { width, grey }: PrintPicture,
  left: number,
  top: number,
  wide: number,
  high: number,
): PrintPicture {
  const part = new Uint8Array(wide * high).fill(255);
  for (let y = 0; y < high; y += 1) {
    part.set(grey.subarray((top + y) * width + left, (top + y) * width + left + wide), y * wide);
  }
  return { width: wide, height: high, grey: part };
}

export interface Found {
  readonly page: number;
  readonly top: number;
  /** Share of the ink of either that has ink of the other within reach, 0 to 1. */
  readonly alike: number;
}

/** How far apart two edges may lie that are the same, in px: two programs soften them differently. */
const REACH = 2;
/** So many of the best places by their rows of ink are looked at closely: sketches are much alike. */
const CANDIDATES = 60;

/** Where on the pages a picture lies best whose left edge is known. */
export function findPicture(
  pages: readonly PrintPicture[],
  picture: PrintPicture,
  left: number,
): Found {
  const wanted = countRows(picture, 0, picture.width);
  const places = pages.flatMap((page, i) => {
    const rows = countRows(page, left, picture.width);
    return Array.from({ length: Math.max(0, page.height - picture.height) }, (_, top) => ({
      page: i,
      top,
      off: differ(wanted, rows, top),
    }));
  });
  const found = places
    .sort((a, b) => a.off - b.off)
    .slice(0, CANDIDATES)
    .map(({ page, top }) => ({
      page,
      top,
      alike: compare(picture, crop(pages[page]!, left, top, picture.width, picture.height)),
    }));
  return found.reduce((best, one) => (one.alike > best.alike ? one : best));
}

function differ(wanted: Uint16Array, rows: Uint16Array, top: number): number {
  let sum = 0;
  for (let y = 0; y < wanted.length; y += 1) sum += Math.abs(wanted[y]! - rows[top + y]!);
  return sum;
}

/** Px of ink in each row between two columns. */
function countRows({ width, height, grey }: PrintPicture, left: number, wide: number): Uint16Array {
  const rows = new Uint16Array(height);
  for (let y = 0; y < height; y += 1) {
    for (let x = left; x < left + wide; x += 1) if (grey[y * width + x]! < INK) rows[y]! += 1;
  }
  return rows;
}

/** Of two pictures of one size: the smaller of the shares of their ink that the other has as well. */
export function compare(a: PrintPicture, b: PrintPicture): number {
  return Math.min(shareIn(a, b), shareIn(b, a));
}

/** Ink of the first near which the second has some; 1 where there is none. */
function shareIn({ width, height, grey }: PrintPicture, other: PrintPicture): number {
  let ink = 0;
  let met = 0;
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      if (grey[y * width + x]! >= INK) continue;
      ink += 1;
      if (hasInkNear(other, x, y)) met += 1;
    }
  }
  return ink === 0 ? 1 : met / ink;
}

function hasInkNear({ width, height, grey }: PrintPicture, x: number, y: number): boolean {
  for (let j = Math.max(0, y - REACH); j <= Math.min(height - 1, y + REACH); j += 1) {
    for (let i = Math.max(0, x - REACH); i <= Math.min(width - 1, x + REACH); i += 1) {
      // Softer ink counts too, or a hair that falls between two px is missed.
      if (grey[j * width + i]! < PAPER - 10) return true;
    }
  }
  return false;
}
