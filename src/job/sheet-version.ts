import type { Sheet } from '../sheet/sheet.ts';
import { sha256 } from './sha256.ts';

const versions = new WeakMap<Sheet, string>();

/** The version of a sheet: sixteen digits of the hash of its text. */
export function sheetVersion(sheet: Sheet): string {
  const known = versions.get(sheet);
  if (known !== undefined) return known;
  const version = textVersion(sheet.source);
  versions.set(sheet, version);
  return version;
}

export function textVersion(text: string): string {
  return sha256(text).slice(0, 16);
}
