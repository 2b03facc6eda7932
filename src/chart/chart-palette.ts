/** How a line of a chart is told from the others: by colour and, without colour, by dash. */
export interface LineStyle {
  readonly colour: string;
  readonly dash: string | undefined;
}

interface Ink {
  readonly name: string;
  readonly light: string;
  readonly dark: string;
}

/**
 * Okabe & Ito, Color Universal Design (2008): those with a contrast of at least 3:1 (WCAG 2.2
 * SC 1.4.11) on light paper, and those with it on dark paper. Black is the page's ink there.
 */
export const INKS: readonly Ink[] = [
  { name: 'blue', light: '#0072B2', dark: '#56B4E9' },
  { name: 'vermilion', light: '#D55E00', dark: '#E69F00' },
  { name: 'green', light: '#009E73', dark: '#009E73' },
  { name: 'black', light: '#000000', dark: '#E8E4D9' },
];

/** Seven dashes and four colours have no factor in common: 28 lines before a style comes again. */
const DASHES: readonly (string | undefined)[] = [
  undefined,
  '9 4',
  '2.5 3',
  '13 4 2.5 4',
  '18 5',
  '11 3 2.5 3 2.5 3',
  '5 3',
];

/**
 * Style of the line with this index. On the page a colour follows the page's light or dark, and
 * `--line-1` to `--line-4` where the page defines them; a file that stands alone has light ones.
 */
export function lineStyle(index: number, standalone: boolean): LineStyle {
  const number = index % INKS.length;
  const { light, dark } = INKS[number]!;
  const colour = standalone ? light : `var(--line-${number + 1}, light-dark(${light}, ${dark}))`;
  return { colour, dash: DASHES[index % DASHES.length] };
}
