import { readSheet } from '../sheet/read-sheet.ts';
import type { Sheet } from '../sheet/sheet.ts';

export interface FetchedSheets {
  /** In the order of the job. */
  readonly sheets: readonly Sheet[];
  /** Files that could not be had; the others work without them. */
  readonly missing: readonly string[];
}

type Fetch = (address: string) => Promise<Pick<Response, 'ok' | 'text'>>;

/**
 * Fetches and reads sheets.
 *
 * @param addresses by the path of the file, such as `../../notebooks/20-gearing.md`
 */
export async function fetchSheets(
  addresses: Readonly<Record<string, string>>,
  fetch: Fetch,
): Promise<FetchedSheets> {
  const files = Object.entries(addresses).map(
    ([path, address]) => [path.replace(/^(\.\.\/)+/, ''), address] as const,
  );
  const read = await Promise.all(
    files.map(async ([file, address]) => fetchSheet(file, address, fetch)),
  );
  const sheets = read.filter((sheet) => sheet !== undefined).sort(compareSheets);
  const missing = files.filter((_, i) => read[i] === undefined).map(([file]) => file);
  return { sheets, missing };
}

async function fetchSheet(file: string, address: string, fetch: Fetch): Promise<Sheet | undefined> {
  try {
    const response = await fetch(address);
    return response.ok ? readSheet(await response.text(), file) : undefined;
  } catch {
    return undefined;
  }
}

/** A sheet without a number stands after all that have one. */
function placeOf({ number }: Sheet): number {
  return number ?? Number.MAX_SAFE_INTEGER;
}

/** In the order of the job. */
export function compareSheets(a: Sheet, b: Sheet): number {
  return placeOf(a) - placeOf(b) || a.name.localeCompare(b.name);
}
