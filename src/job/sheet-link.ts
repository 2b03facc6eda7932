import { isRecord, isText } from './json.ts';
import { packLink, refuseLink, unpackLink } from './packed-link.ts';

/** One sheet of one's own, as it travels: its name, without ending, and its Markdown. */
export interface CarriedSheet {
  readonly name: string;
  readonly text: string;
}

export type SheetReading =
  | { readonly ok: true; readonly sheet: CarriedSheet }
  | { readonly ok: false; readonly message: string };

/** The part of an address that holds one sheet. */
export function formatSheetLink({ name, text }: CarriedSheet): string {
  return packLink('sheet', JSON.stringify({ name, text }));
}

/** The sheet in an address, whole or not at all. */
export function parseSheetLink(hash: string): SheetReading {
  const unpacked = unpackLink('sheet', hash);
  if (!unpacked.ok) return unpacked;
  const data = parseData(unpacked.text);
  if (!isRecord(data) || !isText(data.name) || !isText(data.text)) {
    return refuseLink('sheet', 'This link does not unpack to a sheet');
  }
  return { ok: true, sheet: { name: data.name, text: data.text } };
}

function parseData(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
