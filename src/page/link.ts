/** Address of a sheet on this page, or of one cell on it. */
export function sheetHref(sheet: string, cell?: string): string {
  return `#/${encodeURIComponent(sheet)}${cell === undefined ? '' : `/${encodeURIComponent(cell)}`}`;
}

export interface Destination {
  readonly sheet: string;
  /** A cell to be brought into view. */
  readonly cell?: string;
}

/** Reads the part of the address behind `#`; undefined where it names no sheet. */
export function parseDestination(hash: string): Destination | undefined {
  const match = /^#\/([^/]+)(?:\/([^/]+))?$/.exec(hash);
  if (match === null) return undefined;
  const sheet = decode(match[1]!);
  const cell = match[2] === undefined ? undefined : decode(match[2]);
  return cell === undefined ? { sheet } : { sheet, cell };
}

/**
 * The address that a link in a sheet leads to. `20-gearing.md` is a sheet of this page; the web is
 * reached by http and https; undefined for all else, `javascript:` above all.
 */
export function hrefOf(address: string): string | undefined {
  const sheet = /^(?:\.\/)?([\w-]+)\.md(?:#([a-z0-9_]+))?$/.exec(address);
  if (sheet !== null) return sheetHref(sheet[1]!, sheet[2]);
  if (/^#\/[\w-]+(\/[\w-]+)?$/.test(address)) return address;
  return isWeb(address) ? address : undefined;
}

function isWeb(address: string): boolean {
  if (!URL.canParse(address)) return false;
  const { protocol } = new URL(address);
  return protocol === 'https:' || protocol === 'http:';
}

/** A malformed escape is taken as it stands: it will name no sheet. */
function decode(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}
