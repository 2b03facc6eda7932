import { createInks, type Inks } from './inks.ts';

const SVG = 'http://www.w3.org/2000/svg';
const XMLNS = 'http://www.w3.org/2000/xmlns/';

/** What every drawing needs to know about where it will stand. */
export interface DrawingOptions {
  /** The page's document, or one of a library that has `createElementNS`. */
  readonly document: Document;
  /** Width in px that the drawing is laid out for. */
  readonly width: number;
  /** Starts every id of this drawing; unique on the page. */
  readonly idPrefix: string;
  /** For a file of its own: literal colours and a namespace instead of the page's variables. */
  readonly standalone?: boolean | undefined;
}

/** Makes elements for one drawing, in its colours. */
export interface Pen {
  readonly document: Document;
  readonly inks: Inks;
}

/** `undefined` leaves the attribute out; numbers are px, rounded to a hundredth. */
export type Attributes = Readonly<Record<string, string | number | undefined>>;

export interface Sheet {
  readonly title: string;
  /** What the drawing shows, in sentences. */
  readonly description: string;
  readonly width: number;
  readonly height: number;
}

export function createPen(options: Pick<DrawingOptions, 'document' | 'standalone'>): Pen {
  return { document: options.document, inks: createInks(options.standalone === true) };
}

/** One SVG element with its attributes and children. */
export function createElement(
  pen: Pick<Pen, 'document'>,
  name: string,
  attributes: Attributes = {},
  children: readonly (Node | string)[] = [],
): SVGElement {
  const element = pen.document.createElementNS(SVG, name) as SVGElement;
  setAttributes(element, attributes);
  for (const child of children)
    element.appendChild(typeof child === 'string' ? pen.document.createTextNode(child) : child);
  return element;
}

/** Mutates `element`. */
export function setAttributes(element: Element, attributes: Attributes): void {
  for (const [name, value] of Object.entries(attributes))
    if (value !== undefined) element.setAttribute(name, formatAttribute(value));
}

/** The root of a drawing: an image to assistive technology, with a title and a description. */
export function createRoot(pen: Pen, options: DrawingOptions, sheet: Sheet): SVGElement {
  const root = createElement(pen, 'svg', {
    width: sheet.width,
    height: sheet.height,
    viewBox: `0 0 ${formatAttribute(sheet.width)} ${formatAttribute(sheet.height)}`,
    'font-family': pen.inks.plate,
    'font-variant': 'tabular-nums',
    fill: pen.inks.ink,
    stroke: 'none',
  });
  describe(pen, root, options, sheet);
  return root;
}

/** Mutates `root`: names it, and gives it a namespace where it is to be a file of its own. */
export function describe(
  pen: Pen,
  root: SVGElement,
  options: Pick<DrawingOptions, 'idPrefix' | 'standalone'>,
  words: Pick<Sheet, 'title' | 'description'>,
): void {
  const [titleId, descriptionId] = [`${options.idPrefix}-title`, `${options.idPrefix}-desc`];
  setAttributes(root, {
    role: 'img',
    'aria-labelledby': titleId,
    'aria-describedby': descriptionId,
  });
  if (options.standalone === true) root.setAttributeNS(XMLNS, 'xmlns', SVG);
  root.prepend(
    createElement(pen, 'title', { id: titleId }, [words.title]),
    createElement(pen, 'desc', { id: descriptionId }, [words.description]),
  );
}

export function formatAttribute(value: string | number): string {
  return typeof value === 'string' ? value : String(Math.round(value * 100) / 100 + 0);
}
