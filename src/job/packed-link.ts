import { deflateSync, Inflate } from 'fflate';
import { headOfLink, type LinkKind } from './link-form.ts';
import { sha256 } from './sha256.ts';

/** All of it stands behind the `#`, which no server sees. */
const VERSION = 1;
/** Longer links are cut by programs that pass them on: a file is offered in their place. */
export const LONGEST_LINK = 2000;
/** A link may not unpack to more than this. */
const MOST_BYTES = 20_000_000;

export type Unpacked =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly message: string };

/** The part of an address that holds a text: packed, with its length and a check sum. */
export function packLink(kind: LinkKind, text: string): string {
  const packed = deflateSync(new TextEncoder().encode(text), { level: 9 });
  const payload = encodeBytes(packed);
  const length = payload.length.toString(36);
  return `${headOfLink(kind)}${VERSION}.${length}.${checkOf(payload)}.${payload}`;
}

/** The text in an address, whole or not at all: half of it would be taken for the whole. */
export function unpackLink(kind: LinkKind, hash: string): Unpacked {
  const [version = '', length = '', check = '', payload = ''] = hash
    .slice(headOfLink(kind).length)
    .split('.');
  const wanted = Number.parseInt(length, 36);
  if (/^\d+$/.test(version) && Number(version) > VERSION && length !== '') {
    return refuseLink(kind, `This link was made by a newer Layshaft (form ${version})`);
  }
  if (check.length < 8 || payload === '' || !(payload.length >= wanted)) {
    return refuseCut(kind, payload, wanted);
  }
  if (payload.length !== wanted || checkOf(payload) !== check || version !== String(VERSION)) {
    return refuseLink(
      kind,
      `This link was changed on its way, so that its ${kind} cannot be trusted`,
    );
  }
  const bytes = inflate(payload);
  if (bytes === undefined) return refuseLink(kind, `This link does not unpack to a ${kind}`);
  return { ok: true, text: new TextDecoder().decode(bytes) };
}

/** A link that cannot be opened: why, and what to do about it. */
export function refuseLink(kind: LinkKind, why: string): Extract<Unpacked, { ok: false }> {
  return { ok: false, message: `${why}. Ask for it again, or for the ${kind} as a file` };
}

function refuseCut(kind: LinkKind, payload: string, wanted: number): Unpacked {
  const told =
    payload === '' || !(wanted > 0)
      ? ''
      : `. ${payload.length} of ${wanted} letters of its ${kind} are there`;
  return refuseLink(kind, `This link was cut off on its way${told}`);
}

/** Undefined where it is no packed data, or unpacks to more than a link may hold. */
function inflate(payload: string): Uint8Array | undefined {
  const chunks: Uint8Array[] = [];
  let size = 0;
  const stream = new Inflate((chunk) => {
    size += chunk.length;
    if (size > MOST_BYTES) throw new RangeError('too large');
    chunks.push(chunk);
  });
  try {
    const packed = decodeBytes(payload);
    for (let at = 0; at < packed.length; at += SLICE) {
      stream.push(packed.subarray(at, at + SLICE), at + SLICE >= packed.length);
    }
  } catch {
    return undefined;
  }
  return join(chunks, size);
}

/** So many bytes at a time, so that a bomb is found before it goes off. */
const SLICE = 4096;

function join(chunks: readonly Uint8Array[], size: number): Uint8Array {
  const whole = new Uint8Array(size);
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}

function checkOf(payload: string): string {
  return sha256(payload).slice(0, 8);
}

/** Base 64 with the letters for addresses. Source: RFC 4648, 5. */
function encodeBytes(bytes: Uint8Array): string {
  const letters = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
  return btoa(letters).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

function decodeBytes(text: string): Uint8Array {
  const letters = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
}
