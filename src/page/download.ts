import { nameJobFile } from '../job/file-name.ts';
import { formatJobFile } from '../job/read-job.ts';
import type { Job } from '../job/record.ts';
import { h } from './element.ts';

/** Hands a text over to the person as a file. */
export function downloadText(text: string, name: string, type: string): void {
  downloadBytes(new TextEncoder().encode(text), name, type);
}

/** The same for what is not text. */
export function downloadBytes(bytes: Uint8Array, name: string, type: string): void {
  const address = URL.createObjectURL(new Blob([bytes as Uint8Array<ArrayBuffer>], { type }));
  h('a', { href: address, download: name }).click();
  // The browser takes hold of it with the click, but not within it.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

export function downloadJob(job: Job): void {
  downloadText(formatJobFile(job), nameJobFile(job), 'application/json');
}
