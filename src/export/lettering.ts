import { mapSvgTree, type SvgTree } from './svg-tree.ts';
import type { LetterStyle, Typeface } from './typeface.ts';

/** Every text of the drawing as shapes: it looks the same wherever it is opened, without a font. */
export function outlineTexts(tree: SvgTree, typeface: Typeface): SvgTree {
  return outline(tree, ROOT_STYLE, typeface);
}

/**
 * The drawing with a font of its own inside: texts stay texts. Only the characters that it uses are
 * in it.
 */
export function embedFont(tree: SvgTree, typeface: Typeface): SvgTree {
  const used = collectCharacters(tree);
  const faces = [false, true]
    .filter((bold) => used[bold ? 'bold' : 'regular'].size > 0)
    .map((bold) => {
      const data = encodeBase64(typeface.subset(used[bold ? 'bold' : 'regular'], bold));
      const weight = bold ? 700 : 400;
      return `@font-face{font-family:'${FAMILY}';font-weight:${weight};src:url(data:font/otf;base64,${data}) format('opentype')}`;
    });
  const style: SvgTree = { name: 'style', attributes: {}, children: [faces.join('\n')] };
  const named = mapSvgTree(tree, nameFamily);
  return { ...named, children: insertAfterWords(named.children, style) };
}

/** What a text inherits: the drawings use no more than this. */
interface TextStyle extends LetterStyle {
  readonly anchor: string;
}

const ROOT_STYLE: TextStyle = { size: 10, bold: false, anchor: 'start' };
const FAMILY = 'Layshaft Figures';

function outline(tree: SvgTree, inherited: TextStyle, typeface: Typeface): SvgTree {
  const style = styleOf(tree, inherited);
  if (tree.name === 'text') return outlineText(tree, style, typeface);
  const children = tree.children.map((child) =>
    typeof child === 'string' ? child : outline(child, style, typeface),
  );
  return { ...tree, attributes: withoutTextStyle(tree.attributes), children };
}

function styleOf({ attributes }: SvgTree, inherited: TextStyle): TextStyle {
  const weight = attributes['font-weight'];
  return {
    size: Number(attributes['font-size'] ?? inherited.size),
    bold: weight === undefined ? inherited.bold : weight === '700' || weight === 'bold',
    anchor: attributes['text-anchor'] ?? inherited.anchor,
  };
}

function outlineText(tree: SvgTree, style: TextStyle, typeface: Typeface): SvgTree {
  const runs = listRuns(tree, style);
  const width = runs.reduce((sum, { text, style: of }) => sum + typeface.advance(text, of), 0);
  const y = readLength(tree.attributes.y, style.size) + readLength(tree.attributes.dy, style.size);
  let x = readLength(tree.attributes.x, style.size) - shiftOf(style.anchor) * width;
  const paths = runs.map((run) => {
    const d = typeface.outline(run.text, run.style, x, y);
    x += typeface.advance(run.text, run.style);
    return d;
  });
  const { x: _x, y: _y, dy: _dy, ...rest } = withoutTextStyle(tree.attributes);
  return { name: 'path', attributes: { ...rest, d: paths.join('') }, children: [] };
}

interface Run {
  readonly text: string;
  readonly style: TextStyle;
}

function listRuns(tree: SvgTree, style: TextStyle): readonly Run[] {
  return tree.children.flatMap((child): readonly Run[] =>
    typeof child === 'string' ? [{ text: child, style }] : listRuns(child, styleOf(child, style)),
  );
}

function shiftOf(anchor: string): number {
  return { start: 0, middle: 0.5, end: 1 }[anchor] ?? 0;
}

/** A length in px or in em of the text itself. */
function readLength(text: string | undefined, size: number): number {
  if (text === undefined) return 0;
  return text.endsWith('em') ? Number.parseFloat(text) * size : Number.parseFloat(text);
}

const TEXT_ATTRIBUTES = /^(?:font-|text-anchor$|text-rendering$)/;

function withoutTextStyle(attributes: SvgTree['attributes']): Record<string, string> {
  return Object.fromEntries(
    Object.entries(attributes).filter(([name]) => !TEXT_ATTRIBUTES.test(name)),
  );
}

function collectCharacters(tree: SvgTree): Record<'regular' | 'bold', ReadonlySet<string>> {
  const found = { regular: new Set<string>(), bold: new Set<string>() };
  const collect = (each: SvgTree, inherited: TextStyle): void => {
    const style = styleOf(each, inherited);
    if (each.name === 'text') {
      for (const { text, style: of } of listRuns(each, style))
        for (const character of text.normalize('NFC'))
          found[of.bold ? 'bold' : 'regular'].add(character);
      return;
    }
    for (const child of each.children) if (typeof child !== 'string') collect(child, style);
  };
  collect(tree, ROOT_STYLE);
  return found;
}

/** The one family of the drawing; a system's own letters stand in where it is not read. */
function nameFamily(tree: SvgTree): SvgTree {
  if (tree.attributes['font-family'] === undefined) return tree;
  const family = `'${FAMILY}', Arial, sans-serif`;
  return { ...tree, attributes: { ...tree.attributes, 'font-family': family } };
}

/** Title and description stay first: those who do not see the drawing are told by them. */
function insertAfterWords(
  children: SvgTree['children'],
  style: SvgTree,
): readonly (SvgTree | string)[] {
  const isWords = (child: SvgTree | string) =>
    typeof child !== 'string' && (child.name === 'title' || child.name === 'desc');
  return [...children.filter(isWords), style, ...children.filter((child) => !isWords(child))];
}

/** RFC 4648. */
export function encodeBase64(bytes: Uint8Array): string {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text);
}
