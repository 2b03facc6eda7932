import type { Kind, Value } from '../language/kind.ts';
import type { Cell } from '../sheet/cell.ts';
import type { Display } from '../sheet/sheet.ts';
import { showValue } from '../sheet/show.ts';
import { joinUnit } from '../units/format-quantity.ts';
import type { System } from '../units/unit.ts';
import { h } from './element.ts';

/** A result as it stands under its formula: one figure large, a list as a small table. */
export function createAnswer(
  cell: Cell,
  value: Value,
  system: System,
  names: readonly string[] | undefined,
  words?: string,
): HTMLElement {
  const { kind, display } = cell;
  if (kind?.type === 'list') return createEach(value as Float64Array, kind, display, system, names);
  if (kind?.type === 'texts') return createLine((value as readonly string[]).join(', '), undefined);
  return createLine(kind === undefined ? '' : showValue(value, kind, display, system).text, words);
}

function createLine(text: string, words: string | undefined): HTMLElement {
  const said = words === undefined ? undefined : h('span', { class: 'sign-words' }, words);
  return h('p', { class: 'answer' }, h('strong', {}, text), said);
}

function createEach(
  values: Float64Array,
  kind: Extract<Kind, { type: 'list' }>,
  display: Display,
  system: System,
  names: readonly string[] | undefined,
): HTMLElement {
  if (values.length === 0) return createLine('none', undefined);
  const single: Kind = { type: 'quantity', dimension: kind.dimension };
  const pairs = [...values].map((value, i) => {
    const { number, unit } = showValue(value, single, display, system);
    const mark = joinUnit('', unit);
    // What stands close to its number, such as a degree, is as large: small it would be a dot.
    const behind = /^\s/.test(mark) ? h('span', { class: 'unit' }, mark) : mark;
    const shown = h('dd', {}, number, behind);
    return h('div', {}, h('dt', {}, names?.[i] ?? String(i + 1)), shown);
  });
  return h('dl', { class: 'each' }, ...pairs);
}
