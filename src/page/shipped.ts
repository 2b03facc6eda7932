/*
 * What the page is shipped with beside its script: sheets and the demo job, as data. Their text is
 * fetched, so that the script stays small.
 */

const SHEETS: Readonly<Record<string, string>> = import.meta.glob('../../notebooks/*.md', {
  query: '?url&no-inline',
  import: 'default',
  eager: true,
});
const DEMOS: Readonly<Record<string, string>> = import.meta.glob('../../shared/demo-job.json', {
  query: '?url&no-inline',
  import: 'default',
  eager: true,
});

/** By the path of each sheet, the address at which `fetchText` has its text. */
export const ADDRESSES = SHEETS;
/** The same for the demo job; undefined where there is none. */
export const DEMO: string | undefined = Object.values(DEMOS)[0];

export async function fetchText(address: string): Promise<Pick<Response, 'ok' | 'text'>> {
  return fetch(address);
}
