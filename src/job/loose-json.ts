import { DEEPEST } from './json.ts';

/** What was wrong at one place of a text. */
export interface Fault {
  readonly line: number;
  readonly message: string;
}

export interface LooseReading {
  /** What could be read; undefined where nothing could. */
  readonly value: unknown;
  readonly faults: readonly Fault[];
}

/** More faults than this are one fault: the text is not what it says it is. */
const MOST = 50;

/**
 * Reads JSON that was cut off or damaged. Members that are whole are kept; one that is not is left
 * out with a fault, and the reading goes on with the line below it. What is kept was in the text
 * letter by letter: nothing is guessed.
 */
export function readLooseJSON(text: string): LooseReading {
  const faults: Fault[] = [];
  const reader = new Reader(text, faults);
  const value = reader.readValue(0);
  reader.skipBlanks();
  if (value !== LOST && !reader.isAtEnd()) reader.blame('there is more text behind the end');
  return { value: value === LOST ? undefined : value, faults: faults.slice(0, MOST) };
}

const LOST = Symbol('lost');
const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const STRING = /"(?:[^"\\\n\r]|\\.)*"/y;
const WORD = /true|false|null/y;
const BLANKS = /[\t\n\r ]*/y;

class Reader {
  readonly #text: string;
  readonly #faults: Fault[];
  #at = 0;

  constructor(text: string, faults: Fault[]) {
    this.#text = text;
    this.#faults = faults;
  }

  isAtEnd(): boolean {
    return this.#at >= this.#text.length;
  }

  skipBlanks(): void {
    this.#match(BLANKS);
  }

  /** Mutates the list of faults. */
  blame(message: string): void {
    if (this.#faults.length > MOST) return;
    const line = this.#text.slice(0, this.#at).split('\n').length;
    this.#faults.push({ line, message });
  }

  readValue(depth: number): unknown {
    this.skipBlanks();
    const sign = this.#text[this.#at];
    if (depth > DEEPEST) return this.#lose('nested too deep');
    if (sign === '{') return this.#readObject(depth);
    if (sign === '[') return this.#readList(depth);
    const literal = this.#match(sign === '"' ? STRING : WORD) ?? this.#match(NUMBER);
    if (literal === undefined)
      return this.#lose(this.isAtEnd() ? 'the text is cut off here' : 'this cannot be read');
    return this.#parse(literal);
  }

  #parse(literal: string): unknown {
    try {
      return JSON.parse(literal);
    } catch {
      return this.#lose('this cannot be read');
    }
  }

  #lose(message: string): typeof LOST {
    this.blame(message);
    return LOST;
  }

  #match(pattern: RegExp): string | undefined {
    pattern.lastIndex = this.#at;
    const found = pattern.exec(this.#text)?.[0];
    if (found !== undefined) this.#at += found.length;
    return found;
  }

  #take(sign: string): boolean {
    this.skipBlanks();
    if (this.#text[this.#at] !== sign) return false;
    this.#at += 1;
    return true;
  }

  #readObject(depth: number): unknown {
    const members: [string, unknown][] = [];
    this.#readItems('}', () => {
      const member = this.#readMember(depth);
      if (member === undefined) return false;
      members.push(member);
      return true;
    });
    return Object.fromEntries(members);
  }

  #readMember(depth: number): [string, unknown] | undefined {
    this.skipBlanks();
    const key = this.#match(STRING);
    const name = key === undefined ? LOST : this.#parse(key);
    if (typeof name !== 'string') {
      if (name !== LOST || key === undefined)
        this.blame(this.isAtEnd() ? 'the text is cut off here' : 'a name is missing');
      return undefined;
    }
    if (!this.#take(':')) {
      this.blame(`the value of ${shorten(name)} is missing`);
      return undefined;
    }
    const value = this.readValue(depth + 1);
    return value === LOST ? undefined : [name, value];
  }

  #readList(depth: number): unknown {
    const items: unknown[] = [];
    this.#readItems(']', () => {
      const value = this.readValue(depth + 1);
      if (value === LOST) return false;
      items.push(value);
      return true;
    });
    return items;
  }

  /** Reads items up to the closing sign; behind one that is lost it goes on with the next line. */
  #readItems(close: string, readItem: () => boolean): void {
    this.#at += 1;
    if (this.#take(close)) return;
    for (;;) {
      const read = readItem();
      if (read && this.#take(',')) continue;
      if (this.#take(close)) return;
      if (this.isAtEnd()) {
        if (read) this.blame('the text is cut off here');
        return;
      }
      if (read) this.blame('a comma or a closing bracket is missing');
      if (!this.#skipLine(close)) return;
    }
  }

  /** False where what follows is the end of what is being read, or of the text. */
  #skipLine(close: string): boolean {
    const end = this.#text.indexOf('\n', this.#at);
    this.#at = end < 0 ? this.#text.length : end + 1;
    return !this.#take(close) && !this.isAtEnd();
  }
}

function shorten(text: string): string {
  return text.length <= 40 ? `"${text}"` : `"${text.slice(0, 40)}…"`;
}
