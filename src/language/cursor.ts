import { type QuantityScan, scanQuantity } from '../units/scan-quantity.ts';
import { fail, type Problem, type Span } from './problem.ts';

/** `sheet` reads what a sheet's author writes, `entry` what a person types into a field. */
export type Mode = 'sheet' | 'entry';

export type Token =
  | (QuantityScan & { readonly type: 'quantity' })
  | ({ readonly type: 'text'; readonly value: string } & Span)
  | ({ readonly type: 'word'; readonly text: string } & Span)
  | ({ readonly type: 'symbol'; readonly text: string } & Span)
  | ({ readonly type: 'end' } & Span);

/** Thrown inside the reader only, and caught at its edge: reading stops at the first fault. */
export class ReadFault extends Error {
  readonly problem: Problem;

  constructor(problem: Problem) {
    super(problem.message);
    this.problem = problem;
  }
}

const SYMBOLS = [
  '<=',
  '>=',
  '<>',
  '+',
  '-',
  '*',
  '/',
  '^',
  '(',
  ')',
  '[',
  ']',
  ',',
  ':',
  '.',
  '=',
  '<',
  '>',
];

/** Signs that people type or paste for the plain ones. */
const SPELLINGS: Readonly<Record<string, string>> = {
  '−': '-',
  '×': '*',
  '·': '*',
  '÷': '/',
  '≤': '<=',
  '≥': '>=',
  '≠': '<>',
};

const WORD = /[A-Za-z_][A-Za-z0-9_]*/y;
const BLANKS = /(?:\s|#[^\n]*(?=\n|$))+/y;
const ENTRY_BLANKS = /\s+/y;

/** Reads tokens from a stretch of a longer text; all places are offsets into that text. */
export interface Cursor {
  readonly source: string;
  readonly mode: Mode;
  /** The token under the cursor, without taking it. */
  peek(): Token;
  /** The token under the cursor; moves past it. */
  take(): Token;
  /** Offset at which the token under the cursor begins, blanks skipped. */
  position(): number;
  /** Goes on reading at this offset. */
  moveTo(offset: number): void;
  readonly end: number;
}

/** A cursor over `source` from offset `from` up to `end`. */
export function createCursor(source: string, mode: Mode, from = 0, end = source.length): Cursor {
  const text = end === source.length ? source : source.slice(0, end);
  let offset = from;
  let ahead: Token | undefined;
  const peek = (): Token => {
    ahead ??= readToken(text, skipBlanks(text, offset, mode), mode);
    return ahead;
  };
  return {
    source,
    mode,
    end,
    peek,
    take() {
      const token = peek();
      offset = token.to;
      ahead = undefined;
      return token;
    },
    position: () => skipBlanks(text, offset, mode),
    moveTo(to) {
      offset = to;
      ahead = undefined;
    },
  };
}

function skipBlanks(text: string, at: number, mode: Mode): number {
  return endOf(mode === 'sheet' ? BLANKS : ENTRY_BLANKS, text, at) ?? at;
}

function readToken(text: string, at: number, mode: Mode): Token {
  if (at >= text.length) return { type: 'end', from: text.length, to: text.length };
  if (text[at] === '"' && mode === 'sheet') return readText(text, at);
  const quantity = scanQuantity(text, at, mode);
  if (quantity !== undefined) {
    if ('failure' in quantity) {
      throw new ReadFault(fail(quantity.failure, quantity, { message: quantity.message }));
    }
    return { type: 'quantity', ...quantity };
  }
  const wordEnd = endOf(WORD, text, at);
  if (wordEnd !== undefined)
    return { type: 'word', text: text.slice(at, wordEnd), from: at, to: wordEnd };
  return readSymbol(text, at);
}

function readText(text: string, at: number): Token {
  const close = text.indexOf('"', at + 1);
  if (close < 0)
    throw new ReadFault(fail('unclosed-text', { from: at, to: text.length }, undefined));
  const value = text.slice(at + 1, close).replaceAll(/\s*\n\s*/g, ' ');
  return { type: 'text', value, from: at, to: close + 1 };
}

function readSymbol(text: string, at: number): Token {
  const found = String.fromCodePoint(text.codePointAt(at)!);
  const spelt = SPELLINGS[found];
  if (spelt !== undefined) return { type: 'symbol', text: spelt, from: at, to: at + found.length };
  const symbol = SYMBOLS.find((candidate) => text.startsWith(candidate, at));
  if (symbol !== undefined)
    return { type: 'symbol', text: symbol, from: at, to: at + symbol.length };
  throw new ReadFault(fail('unreadable-character', { from: at, to: at + found.length }, { found }));
}

function endOf(pattern: RegExp, text: string, at: number): number | undefined {
  pattern.lastIndex = at;
  return pattern.test(text) ? pattern.lastIndex : undefined;
}
