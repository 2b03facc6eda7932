/** Blank, tab, no-break space, thin space, narrow no-break space: what may stand between a number and its unit. */
export const BLANKS = ' \t\u00A0\u2009\u202F';

export function isDigit(character: string | undefined): boolean {
  return character !== undefined && character >= '0' && character <= '9' && character.length === 1;
}

export function isBlank(character: string | undefined): boolean {
  return character !== undefined && character !== '' && BLANKS.includes(character);
}

/** Offset of the first character at or after `at` that is no blank. */
export function skipBlanks(text: string, at: number): number {
  let to = at;
  while (isBlank(text[to])) to += 1;
  return to;
}

/** Offset of the first character at or after `at` that is no digit. */
export function skipDigits(text: string, at: number): number {
  let to = at;
  while (isDigit(text[to])) to += 1;
  return to;
}

const WORD = /[\p{L}_][\p{L}\p{M}\p{Nd}_]*/uy;

/** The word that starts at `at`, digits and underscores included, or `''`. */
export function wordAt(text: string, at: number): string {
  WORD.lastIndex = at;
  return WORD.exec(text)?.[0] ?? '';
}

/** A stretch of text as a message quotes it: cut where it is long. */
export function quote(text: string): string {
  return text.length > 40 ? `${text.slice(0, 39)}…` : text;
}
