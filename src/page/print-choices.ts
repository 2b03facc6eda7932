import type { PrintOptions } from '../export/figure-svg.ts';
import { DENSITIES, PRINT_WIDTHS, WIDTH_LIMITS } from '../export/print-size.ts';
import { h } from './element.ts';

export interface PrintChoices extends PrintOptions {
  readonly dotsPerInch: number;
}

export interface ChoicesView {
  readonly element: HTMLElement;
  read(): PrintChoices;
}

const OTHER = 'other';

/** How figures are to be printed: one set of choices for all of them. */
export function createPrintChoices(onChange: () => void): ChoicesView {
  const widths = PRINT_WIDTHS.map((mm) => [String(mm), `${mm} mm`] as const);
  const width = choose('Width', [...widths, [OTHER, 'another width']], '140', change);
  const free = h('input', {
    type: 'text',
    inputmode: 'decimal',
    value: '120',
    'aria-label': `Width in mm, ${WIDTH_LIMITS.join(' to ')}`,
    on: { change },
  });
  const density = choose(
    'Dots per inch of PNG',
    DENSITIES.map((dots) => [String(dots), String(dots)] as const),
    '300',
    change,
  );
  const colour = choose(
    'Inks',
    [
      ['colour', 'colours'],
      ['grey', 'shades of grey'],
    ],
    'colour',
    change,
  );
  const lettering = choose(
    'Lettering of SVG',
    [
      ['outlines', 'outlined'],
      ['font', 'font inside'],
    ],
    'outlines',
    change,
  );
  const element = h(
    'div',
    { class: 'print-choices', role: 'group', 'aria-label': 'How to print' },
    width.element,
    free,
    density.element,
    colour.element,
    lettering.element,
  );

  function change(): void {
    free.hidden = width.field.value !== OTHER;
    onChange();
  }

  free.hidden = true;
  return {
    element,
    read: () => ({
      width: width.field.value === OTHER ? readWidth(free.value) : Number(width.field.value),
      dotsPerInch: Number(density.field.value),
      colour: colour.field.value as PrintChoices['colour'],
      lettering: lettering.field.value as PrintChoices['lettering'],
    }),
  };
}

/** What cannot be read, or lies outside of what can be drawn, comes to the nearest that can. */
export function readWidth(text: string): number {
  const typed = Number.parseFloat(text.replace(',', '.'));
  const [least, most] = WIDTH_LIMITS;
  return Number.isFinite(typed) ? Math.min(most, Math.max(least, typed)) : PRINT_WIDTHS[1];
}

/** A choice of one among a few, with its label. */
export function choose(
  label: string,
  options: readonly (readonly [value: string, words: string])[],
  chosen: string,
  change: () => void,
) {
  const field = h(
    'select',
    { on: { change } },
    ...options.map(([value, words]) => h('option', { value, selected: value === chosen }, words)),
  );
  return { field, element: h('label', {}, h('span', {}, label), field) };
}
