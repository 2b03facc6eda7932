import { createInks } from '../drawing/inks.ts';
import { mapSvgTree, type SvgTree } from './svg-tree.ts';

const INKS = createInks(true) as unknown as Readonly<Record<string, string>>;
const VARIABLE = /var\(--([\w-]+)(?:,\s*((?:[^()]|\([^()]*\))*))?\)/;
const LIGHT_DARK = /light-dark\(\s*([^,()]+),\s*[^,()]+\)/g;

/** A drawing of the page in the inks of print: no variable is left, paper is white. */
export function resolveInks(tree: SvgTree): SvgTree {
  return mapSvgTree(tree, (each) => ({
    ...each,
    attributes: mapValues(each.attributes, resolveInk),
  }));
}

/** One attribute's value without variables. */
export function resolveInk(value: string): string {
  let text = value;
  for (let found = VARIABLE.exec(text); found !== null; found = VARIABLE.exec(text)) {
    const [whole, name, fallback = 'none'] = found;
    const ink = INKS[name!.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase())];
    text = text.replace(whole, () => ink ?? fallback);
  }
  return text.replace(LIGHT_DARK, '$1');
}

/** The drawing in shades of grey, each colour as light as it was to the eye. */
export function toGrey(tree: SvgTree): SvgTree {
  return mapSvgTree(tree, (each) => ({ ...each, attributes: mapValues(each.attributes, greyInk) }));
}

const HEX = /^#([\da-f]{3}|[\da-f]{6})$/i;

/** Relative luminance (WCAG 2.2, IEC 61966-2-1), back as a grey of the same luminance. */
function greyInk(value: string): string {
  const hex = HEX.exec(value)?.[1];
  if (hex === undefined) return value;
  const full = hex.length === 3 ? hex.replace(/./g, '$&$&') : hex;
  const [red, green, blue] = [0, 2, 4].map((at) =>
    linear(Number.parseInt(full.slice(at, at + 2), 16) / 255),
  );
  const luminance = 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
  const grey = Math.round(255 * companded(luminance))
    .toString(16)
    .padStart(2, '0');
  return `#${grey}${grey}${grey}`;
}

function linear(channel: number): number {
  return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
}

function companded(light: number): number {
  return light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055;
}

function mapValues(
  attributes: SvgTree['attributes'],
  change: (value: string) => string,
): SvgTree['attributes'] {
  return Object.fromEntries(Object.entries(attributes).map(([key, value]) => [key, change(value)]));
}
