import { readFile } from 'node:fs/promises';
import { strFromU8, type Unzipped, unzipSync } from 'fflate';
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { layoutWidth } from '../../src/export/print-size.ts';
import { openBrowser } from '../support/open-browser.ts';
import {
  DOTS,
  listDotFaults,
  listFileFaults,
  listMarkFaults,
  listPictureFaults,
} from './figure-faults.ts';
import {
  compareDots,
  layOutFigures,
  leaveOut,
  type ReadFile,
  readFiles,
  type ShownFigure,
  takePictures,
} from './light-table.ts';
import { openApp } from './open-app.ts';

/** Millimetres. */
const WIDTH = 90;
const LAYOUT = layoutWidth(WIDTH);
/** On a fine screen the plotting library draws where a file has it, and not half a pixel beside. */
const FINE = { deviceScaleFactor: 2 };

/** A figure of the demo job: as the page shows it, and its file. */
interface Pair {
  readonly id: string;
  readonly shown: ShownFigure;
  readonly text: string;
  readonly file: ReadFile;
}

let browser: Browser;
let page: Page;
/** A page without anything of the app. */
let table: Page;
let files: Unzipped;
const pairs: Pair[] = [];

beforeAll(async () => {
  browser = await openBrowser();
  ({ page } = await openApp(browser, '140-write-up', FINE));
  table = await (await browser.newContext(FINE)).newPage();
  files = await exportAll();
  for (const [sheet, ids] of await listSheets()) {
    const texts = ids.map((id) => strFromU8(files[`figures/${id}.svg`]!));
    const address = `${inject('appAddress')}#/${sheet}`;
    const shown = await layOutFigures(page, address, ids.length, LAYOUT);
    const read = await readFiles(table, texts);
    pairs.push(...ids.map((id, i) => ({ id, shown: shown[i]!, text: texts[i]!, file: read[i]! })));
  }
}, 300_000);

afterAll(() => browser.close());

/** The write-up of the demo job, as a person takes it out of the app. */
async function exportAll(): Promise<Unzipped> {
  await page.getByText('For print: figures').click();
  await page.locator('.print-choices select').first().selectOption(String(WIDTH));
  const download = page.waitForEvent('download', { timeout: 240_000 });
  await page.getByRole('button', { name: 'The whole job in one zip' }).click();
  return unzipSync(await readFile(await (await download).path()));
}

/** Each sheet that has figures, with their ids in its order. */
async function listSheets(): Promise<readonly (readonly [string, readonly string[]])[]> {
  const index = strFromU8(files['index.html']!);
  const ids = [...index.matchAll(/src="figures\/([^"]+)\.\w+"/g)].map(([, id]) => id!);
  const links = page.locator('.route a[href^="#/"]');
  const sheets = await links.evaluateAll((all) => all.map((a) => a.getAttribute('href')!.slice(2)));
  return sheets
    .map((sheet) => [sheet, ids.filter((id) => numberOf(id) === numberOf(sheet))] as const)
    .filter(([, mine]) => mine.length > 0);
}

function numberOf(name: string): string {
  return name.replace(/-.*/, '');
}

/** How the files look other than on the page, by figure. */
async function comparePictures(list: readonly Pair[]): Promise<readonly string[]> {
  const place = ({ shown: { height } }: Pair, text: string) => ({ text, height });
  const bare = await leaveOut(
    table,
    list.map(({ text, shown }) => ({
      text,
      // The first mark of a file is the paper.
      places: shown.marks.flatMap(({ name }, i) => (name === 'text' ? [i + 1] : [])),
    })),
  );
  const wholes = await takePictures(
    table,
    list.map((pair) => place(pair, pair.text)),
    LAYOUT,
  );
  const bares = await takePictures(
    table,
    list.map((pair, i) => place(pair, bare[i]!)),
    LAYOUT,
  );
  return list.flatMap(({ id, shown }, i) =>
    listPictureFaults(shown, { whole: wholes[i]!, bare: bares[i]! }).map((f) => `${id}: ${f}`),
  );
}

/** How the PNG files differ from their drawings, by figure. */
async function compareWithPNG(list: readonly Pair[]): Promise<readonly string[]> {
  const pairs = list.map(({ id, text }) => ({ png: files[`figures/${id}.png`]!, text }));
  const differences = await compareDots(table, pairs, DOTS.square);
  return differences.flatMap((difference, i) =>
    listDotFaults(difference).map((fault) => `${list[i]!.id}: ${fault}`),
  );
}

/** So many at a time: a picture of all of them would be too tall for a browser. */
function inBatches(): readonly (readonly Pair[])[] {
  return Array.from({ length: Math.ceil(pairs.length / 12) }, (_, i) =>
    pairs.slice(12 * i, 12 * (i + 1)),
  );
}

test('every figure of the demo job has its file, of every kind', () => {
  const kinds = new Set(pairs.map(({ id }) => id.split('-')[1]));
  expect([...kinds].sort()).toEqual(['chart', 'drawing', 'gauge', 'stack']);
  expect(pairs.length).toBeGreaterThan(100);
  expect(pairs).toHaveLength(Object.keys(files).filter((name) => name.endsWith('.svg')).length);
});

test('each is well-formed, leans on nothing, has its width in mm, and says what it shows', () => {
  const faults = pairs.flatMap(({ id, file, text }) =>
    listFileFaults(file, text, WIDTH).map((fault) => `${id}: ${fault}`),
  );
  expect(faults).toEqual([]);
});

test('each has the marks and the words of the page’s own picture', () => {
  const faults = pairs.flatMap(({ id, shown, file }) =>
    listMarkFaults(shown, file).map((fault) => `${id}: ${fault}`),
  );
  expect(faults).toEqual([]);
});

test('each, alone in an image, looks as on the page', async () => {
  const faults: string[] = [];
  for (const batch of inBatches()) faults.push(...(await comparePictures(batch)));
  expect(faults).toEqual([]);
}, 240_000);

test('each PNG has the dots that a browser makes of the drawing', async () => {
  const faults: string[] = [];
  for (const batch of inBatches()) faults.push(...(await compareWithPNG(batch)));
  expect(faults).toEqual([]);
}, 240_000);

const SPOILS: readonly (readonly [string, (pair: Pair) => Promise<string>])[] = [
  ['without its widest line', leaveOutWidest],
  ['moved by two px', async ({ text }) => text.replace('"0 0 ', '"2 0 ')],
  ['in another ink', async ({ text }) => text.replaceAll('"#1c2529"', '"#9c3a12"')],
];

test.each(SPOILS)('a file %s would be found out, of every kind', async (_, spoil) => {
  const kinds = ['chart', 'drawing', 'gauge', 'stack'];
  const some = kinds.map((kind) => pairs.find(({ id }) => id.split('-')[1] === kind)!);
  const spoiled: Pair[] = [];
  for (const pair of some) spoiled.push({ ...pair, text: await spoil(pair) });
  expect(await comparePictures(some)).toEqual([]);
  const faults = [...(await comparePictures(spoiled)), ...(await compareWithPNG(spoiled))];
  for (const { id } of some) {
    expect(faults).toContainEqual(expect.stringMatching(`^${id}: its marks look other by`));
    expect(faults).toContainEqual(expect.stringMatching(`^${id}: its dots are other by`));
  }
});

async function leaveOutWidest({ text, file }: Pair): Promise<string> {
  const widths = file.marks.map(({ name, box }, i) => (i > 0 && name === 'path' ? box.width : 0));
  const [spoiled] = await leaveOut(table, [
    { text, places: [widths.indexOf(Math.max(...widths))] },
  ]);
  return spoiled!;
}
