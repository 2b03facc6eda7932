/**
 * What the page is shipped with beside its script: sheets and the demo job, as data. Their text is
 * fetched, so that the script stays small; in the one-file copy, which can fetch nothing, it is inside.
 */
type ByPath = Readonly<Record<string, string>>;

const isOneFile = import.meta.env.MODE === 'file';

const SHEETS_INSIDE: ByPath = isOneFile
  ? import.meta.glob('../../notebooks/*.md', { query: '?raw', import: 'default', eager: true })
  : {};
const SHEETS_BESIDE: ByPath = isOneFile
  ? {}
  : import.meta.glob('../../notebooks/*.md', {
      query: '?url&no-inline',
      import: 'default',
      eager: true,
    });
const DEMO_INSIDE: ByPath = isOneFile
  ? import.meta.glob('../../shared/demo-job.json', {
      query: '?raw',
      import: 'default',
      eager: true,
    })
  : {};
const DEMO_BESIDE: ByPath = isOneFile
  ? {}
  : import.meta.glob('../../shared/demo-job.json', {
      query: '?url&no-inline',
      import: 'default',
      eager: true,
    });

/** By the path of each sheet, where its text is had with `fetchText`. */
export const ADDRESSES: ByPath = isOneFile ? keysOf(SHEETS_INSIDE) : SHEETS_BESIDE;
/** The same for the demo job; undefined where there is none. */
export const DEMO: string | undefined = Object.values(
  isOneFile ? keysOf(DEMO_INSIDE) : DEMO_BESIDE,
)[0];

/** The text at such an address. */
export async function fetchText(address: string): Promise<Pick<Response, 'ok' | 'text'>> {
  const inside = SHEETS_INSIDE[address] ?? DEMO_INSIDE[address];
  return inside === undefined ? fetch(address) : { ok: true, text: async () => inside };
}

function keysOf(texts: ByPath): ByPath {
  return Object.fromEntries(Object.keys(texts).map((path) => [path, path]));
}
