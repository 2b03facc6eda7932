import { embedFont, outlineTexts } from './lettering.ts';
import { countOwnIds } from './own-ids.ts';
import { resolveInks, toGrey } from './print-inks.ts';
import { layoutWidth, sizeForPrint, thickenLines } from './print-size.ts';
import { formatSvgTree, readSvgTree, type SvgTree } from './svg-tree.ts';
import type { Typeface } from './typeface.ts';

/** How a figure is to be printed. */
export interface PrintOptions {
  /** Millimetres. */
  readonly width: number;
  readonly colour: 'colour' | 'grey';
  /** Texts as shapes, or as texts with the font inside. */
  readonly lettering: 'outlines' | 'font';
}

/** What is said inside the file, for those who do not see it. */
export interface FigureWords {
  readonly title: string;
  readonly description: string;
}

/**
 * A drawing as a file that stands alone: redrawn for its width on paper, sized in mm, in the inks of
 * print, lettering inside, title and description inside.
 *
 * @param draw draws for a width in px
 */
export function figureSVG(
  draw: (width: number) => Element,
  words: FigureWords,
  { width, colour, lettering }: PrintOptions,
  typeface: Typeface,
): string {
  const drawn = countOwnIds(resolveInks(readSvgTree(draw(layoutWidth(width)))));
  const inked = colour === 'grey' ? toGrey(drawn) : drawn;
  const lettered =
    lettering === 'outlines' ? outlineTexts(inked, typeface) : embedFont(inked, typeface);
  const whole = sizeForPrint(thickenLines(sayWords(lettered, words)), width);
  return `<?xml version="1.0" encoding="UTF-8"?>\n${formatSvgTree(onPaper(whole))}\n`;
}

const ROOT = { xmlns: 'http://www.w3.org/2000/svg', version: '1.1' };

/** White behind the drawing: a picture laid on a dark page stays readable. */
function onPaper(tree: SvgTree): SvgTree {
  const paper: SvgTree = {
    name: 'rect',
    attributes: { width: '100%', height: '100%', fill: '#ffffff', stroke: 'none' },
    children: [],
  };
  const at = tree.children.findIndex(
    (child) => typeof child !== 'string' && !['title', 'desc', 'style'].includes(child.name),
  );
  const children = tree.children.toSpliced(at < 0 ? tree.children.length : at, 0, paper);
  return { ...tree, attributes: { ...tree.attributes, ...ROOT }, children };
}

function sayWords(tree: SvgTree, { title, description }: FigureWords): SvgTree {
  const texts: Readonly<Record<string, string>> = { title, desc: description };
  const children = tree.children.map((child) => {
    const text = typeof child === 'string' ? undefined : texts[child.name];
    return text === undefined ? child : { ...(child as SvgTree), children: [text] };
  });
  return { ...tree, children };
}
