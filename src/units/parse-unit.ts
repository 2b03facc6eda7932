import { isDigit, wordAt } from './characters.ts';
import { composeUnit, fuseTorques, type UnitPart } from './compound.ts';
import type { Unit } from './unit.ts';
import { findMark, findUnit, type ReadingMode } from './unit-index.ts';
import type { UnitDeclaration } from './unit-table.ts';

/** A unit found in a text; `to` is the offset behind it. */
export interface UnitScan {
  readonly unit: Unit;
  readonly to: number;
}

/**
 * The unit that starts at `at`: known symbols without blanks, joined by `·`, `*` or `/`, each with
 * a whole exponent (`^3`, `³`, `^-1`); it may begin with `1/`. Ends before what is no unit:
 * `in/x` gives `in`. Undefined where no unit starts.
 */
export function scanUnit(text: string, at: number, mode: ReadingMode): UnitScan | undefined {
  const scan = scanParts(text, at, mode);
  return scan.parts.length === 0 ? undefined : { unit: composeUnit(scan.parts), to: scan.to };
}

/** The unit that the whole text names, or undefined. Marks such as `"` are not read. */
export function parseUnit(text: string): Unit | undefined {
  const scan = scanUnit(text, 0, 'sheet');
  return scan !== undefined && scan.to === text.length ? scan.unit : undefined;
}

/** The parts of the unit that the whole text names, torques drawn together; empty where it names none. */
export function parseUnitParts(text: string): readonly UnitPart[] {
  const declared = findUnit(text);
  if (declared !== undefined) return [{ unit: declared, exponent: 1 }];
  const scan = scanParts(text, 0, 'sheet');
  return scan.to === text.length ? fuseTorques(scan.parts) : [];
}

interface PartsScan {
  readonly parts: readonly UnitPart[];
  readonly to: number;
}

function scanParts(text: string, at: number, mode: ReadingMode): PartsScan {
  const parts: UnitPart[] = [];
  let sign = text.startsWith('1/', at) ? -1 : 1;
  let from = sign < 0 ? at + 2 : at;
  let to = at;
  for (;;) {
    const symbol = scanSymbol(text, from, mode);
    if (symbol === undefined || (parts.length > 0 && isName(text, symbol.to))) break;
    const power = scanExponent(text, symbol.to);
    parts.push({ unit: symbol.unit, exponent: sign * power.exponent * symbol.exponent });
    to = power.to;
    if (!isJoin(text[to])) break;
    sign = text[to] === '/' ? -1 : 1;
    from = to + 1;
  }
  return { parts, to };
}

function isJoin(character: string | undefined): boolean {
  return character !== undefined && '·⋅∙*/'.includes(character);
}

/** `2 in*min(a, b)`, `2 in/g.x`: behind a join, a word that is called or has a field is a name. */
function isName(text: string, to: number): boolean {
  return text[to] === '(' || (text[to] === '.' && wordAt(text, to + 1) !== '');
}

interface SymbolScan {
  readonly unit: UnitDeclaration;
  readonly exponent: number;
  readonly to: number;
}

function scanSymbol(text: string, at: number, mode: ReadingMode): SymbolScan | undefined {
  const word = wordAt(text, at);
  return word === '' ? scanSign(text, at, mode) : scanWord(text, at, word);
}

function scanWord(text: string, at: number, word: string): SymbolScan | undefined {
  const to = at + word.length;
  const second = /[-.\u2010\u2011]/.test(text[to] ?? '') ? wordAt(text, to + 1) : '';
  const hyphened = second === '' ? undefined : findUnit(`${word}-${second}`);
  if (hyphened) return { unit: hyphened, exponent: 1, to: to + 1 + second.length };
  const unit = findUnit(word);
  if (unit) return { unit, exponent: 1, to };
  const raised = /^(.+)([23])$/.exec(word);
  const base = raised ? findUnit(raised[1]!) : undefined;
  return base && { unit: base, exponent: Number(raised![2]), to };
}

/** `°`, `%` and, in an entry, inch and foot marks. A letter glued on makes it something else: `°C`. */
function scanSign(text: string, at: number, mode: ReadingMode): SymbolScan | undefined {
  for (const length of [2, 1]) {
    const sign = text.slice(at, at + length);
    if (sign.length < length) continue;
    const unit = /^[°%]$/.test(sign) ? findUnit(sign) : undefined;
    const found = unit ?? (mode === 'entry' ? findMark(sign) : undefined);
    const to = at + length;
    if (found) return wordAt(text, to) === '' ? { unit: found, exponent: 1, to } : undefined;
  }
  return undefined;
}

const CARET = /\^(-?[1-9]\d?)(?![\d]|\.\d)/y;
const RAISED = /⁻?[¹²³⁴⁵⁶⁷⁸⁹]/y;
const RAISED_DIGITS = '⁰¹²³⁴⁵⁶⁷⁸⁹';

function scanExponent(
  text: string,
  at: number,
): { readonly exponent: number; readonly to: number } {
  CARET.lastIndex = at;
  const caret = CARET.exec(text);
  if (caret) return { exponent: Number(caret[1]), to: at + caret[0].length };
  RAISED.lastIndex = at;
  const raised = RAISED.exec(text)?.[0];
  if (raised === undefined || isDigit(text[at + raised.length])) return { exponent: 1, to: at };
  const power = RAISED_DIGITS.indexOf(raised.at(-1)!);
  return { exponent: raised.length === 2 ? -power : power, to: at + raised.length };
}
