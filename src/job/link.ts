import { deflateSync, Inflate } from 'fflate';
import { LINK_HEAD } from './link-form.ts';
import { formatJob, type JobReading, parseJob } from './read-job.ts';
import type { Job } from './record.ts';
import { sha256 } from './sha256.ts';

/** All of the job stands behind the `#`, which no server sees. */
const VERSION = 1;
/** Longer links are cut by programs that pass them on: a file is offered in their place. */
export const LONGEST_LINK = 2000;
/** A link may not unpack to more than this. */
const MOST_BYTES = 20_000_000;

/** The part of an address that holds the whole job. */
export function formatLink(job: Job): string {
  const packed = deflateSync(new TextEncoder().encode(formatJob(job)), { level: 9 });
  const payload = encodeBytes(packed);
  return `${LINK_HEAD}${VERSION}.${payload.length.toString(36)}.${checkOf(payload)}.${payload}`;
}

const AGAIN = 'Ask for it again, or for the job as a file';

/** The job in an address, whole or not at all: half a job would be taken for the whole one. */
export function parseLink(hash: string): JobReading {
  const [version = '', length = '', check = '', payload = ''] = hash
    .slice(LINK_HEAD.length)
    .split('.');
  const wanted = Number.parseInt(length, 36);
  if (/^\d+$/.test(version) && Number(version) > VERSION && length !== '') {
    return refuse(`This link was made by a newer Layshaft (form ${version}). ${AGAIN}`);
  }
  if (check.length < 8 || !(payload.length >= wanted)) return refuse(describeCut(payload, wanted));
  if (payload.length !== wanted || checkOf(payload) !== check || version !== String(VERSION)) {
    return refuse(`This link was changed on its way, so that its job cannot be trusted. ${AGAIN}`);
  }
  return unpack(payload);
}

function describeCut(payload: string, wanted: number): string {
  const told =
    payload === '' || !(wanted > 0)
      ? ''
      : ` ${payload.length} of ${wanted} letters of its job are there.`;
  return `This link was cut off on its way.${told} ${AGAIN}`;
}

function unpack(payload: string): JobReading {
  const bytes = inflate(payload);
  if (bytes === undefined) {
    return refuse(`This link does not unpack to a job. ${AGAIN}`);
  }
  return parseJob(new TextDecoder().decode(bytes));
}

/** Undefined where it is no packed data, or unpacks to more than a job may be. */
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

function refuse(message: string): JobReading {
  return { ok: false, message };
}
