/** For tests of drawings: puts them on a page in their font and measures what came out. */
import latin from '@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2?url';

export interface TextBox {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Mutates the page's fonts: widths are only true in the font that drawings are laid out for. */
export async function loadPlate(): Promise<void> {
  const face = new FontFace('Atkinson Hyperlegible Next', `url(${latin})`, { weight: '200 800' });
  document.fonts.add(await face.load());
}

/** Mutates the page: shows a drawing alone. */
export function show(svg: SVGElement): SVGSVGElement {
  document.body.replaceChildren(svg);
  return svg as SVGSVGElement;
}

/** Boxes of all texts of a drawing that is shown, in its own px. */
export function listTexts(svg: SVGElement): readonly TextBox[] {
  const origin = svg.getBoundingClientRect();
  return [...svg.querySelectorAll('text')].map((text) => {
    const { left, top, right, bottom } = text.getBoundingClientRect();
    return {
      text: text.textContent ?? '',
      left: left - origin.left,
      top: top - origin.top,
      right: right - origin.left,
      bottom: bottom - origin.top,
    };
  });
}

/** Texts that stick out of the drawing, with where they do. */
export function findCut(svg: SVGElement): readonly string[] {
  const { width, height } = svg.getBoundingClientRect();
  return listTexts(svg)
    .filter(
      (box) =>
        box.left < -0.5 || box.top < -0.5 || box.right > width + 0.5 || box.bottom > height + 0.5,
    )
    .map((box) => `${box.text}: ${box.left} ${box.top} ${box.right} ${box.bottom}`);
}

/** Pairs of texts that lie on each other. */
export function findOverlaps(svg: SVGElement): readonly string[] {
  const boxes = listTexts(svg);
  return boxes.flatMap((a, i) =>
    boxes.slice(i + 1).flatMap((b) => (meet(a, b) ? [`${a.text} | ${b.text}`] : [])),
  );
}

/** A pixel of grace: letters do not fill the height of their line. */
function meet(a: TextBox, b: TextBox): boolean {
  return (
    a.left < b.right - 0.5 && b.left < a.right - 0.5 && a.top < b.bottom - 1 && b.top < a.bottom - 1
  );
}

/** Numbers of the first path that matches, in the order written. */
export function numbersOf(svg: SVGElement, selector: string, name = 'd'): readonly number[] {
  const value = svg.querySelector(selector)?.getAttribute(name) ?? '';
  return [...value.matchAll(/-?\d+(?:\.\d+)?/g)].map(Number);
}
