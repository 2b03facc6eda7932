/*
 * The same as `shipped.ts` in the one-file copy, which can fetch nothing: all texts are inside.
 */

const SHEETS: Readonly<Record<string, string>> = import.meta.glob('../../notebooks/*.md', {
  query: '?raw',
  import: 'default',
  eager: true,
});
const DEMOS: Readonly<Record<string, string>> = import.meta.glob('../../shared/demo-job.json', {
  query: '?raw',
  import: 'default',
  eager: true,
});

const TEXTS = new Map(Object.entries({ ...SHEETS, ...DEMOS }));

/** By the path of each sheet, where `fetchText` has its text: the path itself. */
export const ADDRESSES = Object.fromEntries(Object.keys(SHEETS).map((path) => [path, path]));
export const DEMO: string | undefined = Object.keys(DEMOS)[0];

export async function fetchText(address: string): Promise<Pick<Response, 'ok' | 'text'>> {
  const text = TEXTS.get(address);
  return { ok: text !== undefined, text: async () => text ?? '' };
}
