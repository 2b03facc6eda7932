import { buffer } from 'node:stream/consumers';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { type Entry, fromBuffer, type ZipFile } from 'yauzl';
import { makeBundle } from '../../src/export/bundle.ts';
import type { BundleOptions } from '../../src/export/bundle-contents.ts';
import { createStanding } from '../../src/sheet/standing.ts';
import { openNotebooks, work } from '../support/notebooks.ts';
import { loadTestTools } from './tools.ts';

const TOOLS = await loadTestTools();
const BOOK = openNotebooks();
const STANDING = createStanding(BOOK, work(BOOK, '20-gearing').frame, { isEntered: () => false });
const SHEETS = BOOK.sheets.filter(({ name }) => name === '20-gearing' || name === '140-write-up');

const OPTIONS: BundleOptions = {
  width: 90,
  dotsPerInch: 72,
  colour: 'colour',
  lettering: 'outlines',
  figureFormats: ['svg', 'png', 'csv'],
  tableFormats: ['md', 'html', 'csv'],
  title: 'Estate <five-speed>',
  credit: 'A. N. Other',
  wordsOf: () => ({}),
  job: '{}',
};

/** The files of a zip, as a reader of another make finds them. */
async function unzip(bytes: Uint8Array): Promise<ReadonlyMap<string, Buffer>> {
  const files = new Map<string, Buffer>();
  const zip = await new Promise<ZipFile>((resolve, reject) =>
    fromBuffer(Buffer.from(bytes), { lazyEntries: true }, (error, opened) =>
      error ? reject(error) : resolve(opened),
    ),
  );
  return new Promise((resolve, reject) => {
    zip.on('entry', (entry: Entry) => {
      zip.openReadStream(entry, (error, stream) => {
        if (error) return reject(error);
        buffer(stream).then((content) => {
          files.set(entry.fileName, content);
          zip.readEntry();
        }, reject);
      });
    });
    zip.on('end', () => resolve(files));
    zip.on('error', reject);
    zip.readEntry();
  });
}

const make = (options: Partial<BundleOptions> = {}, onProgress?: (share: number) => void) =>
  makeBundle(STANDING, SHEETS, { ...OPTIONS, ...options }, TOOLS, onProgress);

describe('the bundle of a write-up', () => {
  test('is read by another program, and holds what its page names', async () => {
    const files = await unzip(await make());
    const page = files.get('index.html')!.toString();
    const { document } = parseHTML(page);
    const named = [...document.querySelectorAll('a, img')].map(
      (one) => one.getAttribute('href') ?? one.getAttribute('src')!,
    );
    expect(named.length).toBeGreaterThan(20);
    for (const name of named) expect([...files.keys()]).toContain(name);
    expect(document.querySelector('h1')!.textContent).toBe('Estate <five-speed>');
    expect(page).not.toMatch(/<script|https?:/);
  });

  test('is the same bytes for the same job', async () => {
    const [one, other] = [await make(), await make()];
    expect(Buffer.compare(one, other)).toBe(0);
  });

  test('holds the formats that were chosen and no others', async () => {
    const files = await unzip(await make({ figureFormats: ['csv'], tableFormats: ['md'] }));
    const endings = new Set([...files.keys()].map((name) => name.replace(/^.*\./, '')));
    expect(endings).toEqual(new Set(['csv', 'md', 'html', 'json']));
  });

  test('holds only the figures that were chosen', async () => {
    const chosen = new Set(['20-chart-engine-speed-against-road-speed']);
    const files = await unzip(await make({ chosen, figureFormats: ['svg'] }));
    expect([...files.keys()].filter((name) => name.startsWith('figures/'))).toEqual([
      'figures/20-chart-engine-speed-against-road-speed.svg',
    ]);
  });

  test('has words of one’s own where there are any', async () => {
    const words = { caption: 'Five gears & one axle.', alt: 'Five rising lines.' };
    const files = await unzip(
      await make({
        figureFormats: ['svg'],
        wordsOf: ({ kind }) => (kind === 'chart' ? words : {}),
      }),
    );
    expect(files.get('captions.md')!.toString()).toContain('Five gears & one axle.');
    expect(files.get('index.html')!.toString()).toContain('Five gears &amp; one axle.');
    const svg = files.get('figures/20-chart-engine-speed-against-road-speed.svg')!.toString();
    expect(svg).toContain('Five rising lines.');
  });

  test('names the sources', async () => {
    const files = await unzip(await make({ figureFormats: ['csv'] }));
    expect(files.get('sources.md')!.toString()).toContain('common practice, no source');
  });

  test('tells how far it is, to the end, and can be stopped', async () => {
    const shares: number[] = [];
    await make({ figureFormats: ['csv'] }, (share) => shares.push(share));
    expect(shares.at(-1)).toBe(1);
    expect([...shares].sort((a, b) => a - b)).toEqual(shares);
    const stopped = make({ figureFormats: ['csv'] }, () => {
      throw new Error('stopped');
    });
    await expect(stopped).rejects.toThrow('stopped');
  });
});
