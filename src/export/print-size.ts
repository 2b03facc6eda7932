import { mapSvgTree, type SvgTree } from './svg-tree.ts';

/** Widths of one column, one and a half, and two columns of a journal page, mm; common practice. */
export const PRINT_WIDTHS = [90, 140, 190] as const;
/** Dots per inch: photograph, combination, line art; common practice. */
export const DENSITIES = [300, 600, 1000] as const;

export const MM_PER_INCH = 25.4;
const MM_PER_POINT = MM_PER_INCH / 72;
/** The smallest lettering of any drawing, in px of its layout. */
const LEAST_LETTERING = 12;
/** Lettering on paper is nowhere smaller than this, points. */
export const LEAST_POINTS = 7;
/** Lines on paper are nowhere thinner than this, points. */
export const LEAST_LINE_POINTS = 0.5;

/** Millimetres on paper for each px of a drawing's layout: its smallest lettering comes to 7 pt. */
export const MM_PER_PX = (LEAST_POINTS * MM_PER_POINT) / LEAST_LETTERING;

/** Narrowest and widest drawing, mm: below it words no longer fit beside one another. */
export const WIDTH_LIMITS = [65, 400] as const;

/** Px to lay a drawing out for, so that it is drawn for its place in print and never scaled to it. */
export function layoutWidth(mm: number): number {
  return Math.floor(mm / MM_PER_PX);
}

/** Lines too thin to print are drawn at half a point. Lettering's halo and fills have none. */
export function thickenLines(tree: SvgTree): SvgTree {
  const least = (LEAST_LINE_POINTS * MM_PER_POINT) / MM_PER_PX;
  return mapSvgTree(tree, (each) => {
    const width = Number(each.attributes['stroke-width']);
    if (!(width > 0 && width < least)) return each;
    const thicker = String(Math.ceil(least * 1000) / 1000);
    return { ...each, attributes: { ...each.attributes, 'stroke-width': thicker } };
  });
}

/** The size of the drawing on paper, in its root element. */
export function sizeForPrint(tree: SvgTree, mm: number): SvgTree {
  const [, , width = 1, height = 1] = (tree.attributes.viewBox ?? '').split(/[\s,]+/).map(Number);
  const tall = Math.round((mm * height * 1000) / width) / 1000;
  return { ...tree, attributes: { ...tree.attributes, width: `${mm}mm`, height: `${tall}mm` } };
}

/** Pixels of a picture from side to side. */
export function pixelsAcross(mm: number, dotsPerInch: number): number {
  return Math.round((mm / MM_PER_INCH) * dotsPerInch);
}
