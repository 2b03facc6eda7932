import { type Difference, findDifference, type Picture } from '../support/low-picture.ts';
import type { Mark, ReadFile, ShownFigure } from './light-table.ts';

/** Seen in squares of so many px, marks may differ by so much. */
const MARKS = { square: 3, most: 25 };
/** Letters are smoothed, and symbols come from another font, so that more of them differs. */
const WHOLE = { square: 8, most: 50 };
/** At 300 dots an inch. */
export const DOTS = { square: 5, most: 25 };
/** A symbol of another font may be wider by so much, px. */
const SLACK = 5;

/** What is wrong with a file by itself, a sentence each. */
export function listFileFaults(file: ReadFile, text: string, width: number): readonly string[] {
  const { fault, attributes, title, description } = file;
  const [, , across, down] = (attributes.viewBox ?? '').split(' ').map(Number);
  const tall = Number.parseFloat(attributes.height ?? '');
  const faults: readonly (readonly [boolean, string])[] = [
    [fault !== undefined, `is not well-formed: ${fault}`],
    [!text.startsWith('<?xml version="1.0" encoding="UTF-8"?>'), 'has no declaration of XML'],
    [/var\(|currentColor|light-dark\(/i.test(text), 'leans on the colours of a page'],
    [
      /<(?:script|image|foreignObject|use|text)\b|@import|https?:(?!\/\/www\.w3\.org\/)/.test(text),
      'leans on something outside',
    ],
    [attributes.width !== `${width}mm`, `is ${attributes.width} wide`],
    [
      !/mm$/.test(attributes.height ?? '') || Math.abs(tall - (width * down!) / across!) > 0.001,
      `is ${attributes.height} tall`,
    ],
    [title === '' || description === '', 'does not say what it shows'],
  ];
  return faults.flatMap(([isWrong, words]) => (isWrong ? [words] : []));
}

/** How a file differs from the page in what it draws and says, mark by mark. */
export function listMarkFaults(shown: ShownFigure, file: ReadFile): readonly string[] {
  // The first is the paper.
  const marks = file.marks.slice(1);
  const words = [
    ...(shown.title === file.title ? [] : [`is called ${file.title}`]),
    ...(shown.description.startsWith(file.description) ? [] : ['says something else']),
  ];
  if (marks.length !== shown.marks.length)
    return [...words, `has ${marks.length} marks for ${shown.marks.length}`];
  return [...words, ...shown.marks.flatMap((mark, i) => compareMarks(mark, marks[i]!))];
}

/** Inks, names and lettering are another matter. */
const APART = /^(?:fill|stroke|id|clip-path|font-.*|text-anchor)$/;

function compareMarks(mark: Mark, other: Mark): readonly string[] {
  if (mark.name === 'text') return compareLetters(mark, other);
  if (mark.name !== other.name) return [`has a ${other.name} for a ${mark.name}`];
  const names = new Set([...Object.keys(mark.attributes), ...Object.keys(other.attributes)]);
  return [...names]
    .filter((name) => !APART.test(name))
    .flatMap((name) => {
      const [here, there] = [mark.attributes[name], other.attributes[name]];
      // Lines too thin for print are thicker there.
      const isThicker =
        name === 'stroke-width' && Number(there) > Number(here) && Number(here) < 0.86;
      return here === there || isThicker
        ? []
        : [`has a ${mark.name} with ${name} ${there} for ${here}`];
    });
}

/** Letters are shapes in the file: as long as on the page, in the same place, within the line. */
function compareLetters({ box }: Mark, { box: shape, name }: Mark): readonly string[] {
  const ends = [shape.x - box.x, shape.x + shape.width - box.x - box.width];
  const isInLine = shape.y >= box.y && shape.y + shape.height <= box.y + box.height;
  const isThere = name === 'path' && shape.height > 0 && isInLine;
  if (isThere && ends.every((off) => Math.abs(off) <= SLACK)) return [];
  return [`has letters at ${shape.x}, ${shape.y} for those at ${box.x}, ${box.y}`];
}

/** How a file, alone in an image, looks other than on the page. */
export function listPictureFaults(
  shown: ShownFigure,
  { whole, bare }: { readonly whole: Picture; readonly bare: Picture },
): readonly string[] {
  const marks = findDifference(shown.bare, bare, MARKS.square);
  const all = findDifference(shown.picture, whole, WHOLE.square);
  return [
    ...describe('its marks look other', marks, MARKS),
    ...describe('it looks other', all, WHOLE),
  ];
}

/** How a PNG differs from what a browser makes of the drawing. */
export function listDotFaults(difference: Difference): readonly string[] {
  return describe('its dots are other', difference, DOTS);
}

function describe(what: string, { size, x, y }: Difference, { most }: typeof MARKS) {
  return size <= most ? [] : [`${what} by ${size.toFixed(1)} at ${x}, ${y}`];
}
