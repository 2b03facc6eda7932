const SIZE = 64;

/** Fractional parts of the cube roots of the first 64 primes. */
const ROUNDS = Uint32Array.from(listPrimes(64), (prime) => fraction(Math.cbrt(prime)));
/** Of the square roots of the first eight. */
const START = Uint32Array.from(listPrimes(8), (prime) => fraction(Math.sqrt(prime)));

/**
 * SHA-256 of a text in UTF-8, in hexadecimal. Source: FIPS 180-4. The browser has one of its own, but
 * only for pages that come by https, and a copy of the app may lie on a disk or in a workshop's network.
 */
export function sha256(text: string): string {
  const bytes = pad(new TextEncoder().encode(text));
  const view = new DataView(bytes.buffer);
  const state = START.slice();
  const words = new Uint32Array(SIZE);
  for (let at = 0; at < bytes.length; at += SIZE) digest(state, words, view, at);
  return Array.from(state, (word) => word.toString(16).padStart(8, '0')).join('');
}

/** The message, a one, zeros, and its length in bits in the last eight bytes. */
function pad(message: Uint8Array): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(Math.ceil((message.length + 9) / SIZE) * SIZE);
  bytes.set(message);
  bytes[message.length] = 0x80;
  const view = new DataView(bytes.buffer);
  view.setUint32(bytes.length - 8, Math.floor(message.length / 2 ** 29));
  view.setUint32(bytes.length - 4, message.length * 8);
  return bytes;
}

/** Mutates the state and the words. */
function digest(state: Uint32Array, words: Uint32Array, view: DataView, at: number): void {
  for (let i = 0; i < 16; i += 1) words[i] = view.getUint32(at + 4 * i);
  for (let i = 16; i < SIZE; i += 1) {
    words[i] =
      words[i - 16]! +
      small(words[i - 15]!, 7, 18, 3) +
      words[i - 7]! +
      small(words[i - 2]!, 17, 19, 10);
  }
  let [a, b, c, d, e, f, g, h] = state as unknown as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  for (let i = 0; i < SIZE; i += 1) {
    const first = (h + large(e, 6, 11, 25) + ((e & f) ^ (~e & g)) + ROUNDS[i]! + words[i]!) | 0;
    const second = (large(a, 2, 13, 22) + ((a & b) ^ (a & c) ^ (b & c))) | 0;
    [h, g, f, e, d, c, b, a] = [g, f, e, (d + first) | 0, c, b, a, (first + second) | 0];
  }
  [a, b, c, d, e, f, g, h].forEach((word, i) => {
    state[i]! += word;
  });
}

function turn(word: number, by: number): number {
  return (word >>> by) | (word << (32 - by));
}

function small(word: number, a: number, b: number, shift: number): number {
  return turn(word, a) ^ turn(word, b) ^ (word >>> shift);
}

function large(word: number, a: number, b: number, c: number): number {
  return turn(word, a) ^ turn(word, b) ^ turn(word, c);
}

function fraction(root: number): number {
  return Math.floor((root - Math.floor(root)) * 2 ** 32);
}

function listPrimes(count: number): readonly number[] {
  const primes: number[] = [];
  for (let n = 2; primes.length < count; n += 1)
    if (primes.every((p) => n % p !== 0)) primes.push(n);
  return primes;
}
