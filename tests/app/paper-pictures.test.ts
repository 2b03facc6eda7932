import jsQR from 'jsqr';
import type { Browser, Page } from 'playwright';
import UPNG from 'upng-js';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { parseLink } from '../../src/job/link.ts';
import { openBrowser } from '../support/open-browser.ts';
import { readPdf } from '../support/pdf.ts';
import {
  crop,
  drawPages,
  findInked,
  findPicture,
  fromScreen,
  type PrintPicture,
} from '../support/print-picture.ts';
import { lay, layOpen, printPdf } from './lay-paper.ts';
import { BEARING, openApp } from './open-app.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const FORMATS = ['A4', 'letter'] as const;
/** Margins of 15 mm at the sides and 18 mm above and below, in px. */
const ASIDE = 56;
const ABOVE = 68;
/** A figure as high as that is printed smaller than it is laid: 170 mm. */
const HIGHEST = 640;
const FIGURES = '.paper :is(.plot, .drawn) > svg';

interface Shown {
  readonly name: string;
  readonly picture: PrintPicture;
  /** From the edge of the paper, in px. */
  readonly left: number;
  /** Boxes of its words, in px from its corner. */
  readonly words: readonly { text: string; x: number; y: number; width: number; height: number }[];
}

/** Pictures of what is laid, as the page shows it. */
async function takePictures(page: Page, selector: string): Promise<readonly Shown[]> {
  const png = UPNG.decode(new Uint8Array(await page.screenshot({ fullPage: true })).buffer);
  const whole = fromScreen(png.width, png.height, new Uint8Array(UPNG.toRGBA8(png)[0]!));
  const places = await page.locator(selector).evaluateAll((all) => {
    const edge = document.querySelector('.paper')!.getBoundingClientRect().left;
    return all.map((svg) => {
      const { left, top, width, height } = svg.getBoundingClientRect();
      const words = [...svg.querySelectorAll('text')].map((text) => {
        const box = text.getBoundingClientRect();
        return {
          text: text.textContent,
          x: box.left - left,
          y: box.top - top,
          width: box.width,
          height: box.height,
        };
      });
      const name = `${svg.closest('figure, td, tr, div')!.textContent.slice(0, 50)}`;
      return { name, left, top: top + scrollY, width, height, fromEdge: left - edge, words };
    });
  });
  return places
    .filter(({ height, width }) => height > 0 && width > 0 && height < HIGHEST)
    .map(({ name, left, top, width, height, fromEdge, words }) => ({
      name,
      words,
      left: Math.round(ASIDE + 0.7 + fromEdge),
      picture: crop(
        whole,
        Math.round(left),
        Math.round(top),
        Math.floor(width),
        Math.floor(height),
      ),
    }));
}

/** Those that are on no page as they were shown, with how much of them was found. */
function findMissing(pages: readonly PrintPicture[], shown: readonly Shown[]): readonly string[] {
  return shown
    .map(({ name, picture, left }) => ({ name, ...findPicture(pages, picture, left) }))
    .filter(({ alike }) => alike < 0.97)
    .map(({ name, page, alike }) => `${name}: ${alike.toFixed(3)} on page ${page + 1}`);
}

/** Pages with ink where their margins are. */
function findOver(pages: readonly PrintPicture[]): readonly string[] {
  return pages.flatMap((page, i) => {
    const inked = findInked(page)!;
    const over =
      inked.left < ASIDE - 1 ||
      inked.right > page.width - ASIDE + 1 ||
      inked.top < 20 ||
      inked.bottom > page.height - 20;
    return over ? [`page ${i + 1}: ${JSON.stringify(inked)}`] : [];
  });
}

describe.each(FORMATS)('on %s', (format) => {
  test('each figure is printed as it is shown, whole, and nothing in the margins', async () => {
    const page = await lay(browser, BEARING, { what: 'sheet', format });
    const shown = await takePictures(page, FIGURES);
    expect(shown.length).toBeGreaterThan(5);
    const pages = await drawPages(await printPdf(page));
    expect(findMissing(pages, shown)).toEqual([]);
    expect(findOver(pages)).toEqual([]);
  });

  test('so is each sketch of a measuring sheet', async () => {
    const page = await lay(browser, BEARING, { what: 'measure-sheet', format });
    const shown = await takePictures(page, '.paper .datum > svg');
    expect(shown.length).toBeGreaterThan(15);
    const pages = await drawPages(await printPdf(page));
    expect(findMissing(pages, shown)).toEqual([]);
    expect(findOver(pages)).toEqual([]);
  });
});

describe('would be found', () => {
  test.each([
    ['a figure that the edge cuts', '.paper .stack { margin-left: -8mm }'],
    ['a chart that is drawn otherwise', '.paper .plot path { translate: 0 6px }'],
    ['words that are missing', '.paper .drawn text { display: none }'],
  ])('%s', async (_, rule) => {
    const page = await lay(browser, BEARING, { what: 'sheet', narrative: 'no' });
    const shown = await takePictures(page, FIGURES);
    await addRule(page, rule);
    const missing = findMissing(await drawPages(await printPdf(page)), shown);
    expect(missing.length).toBeGreaterThan(0);
    expect(missing.length).toBeLessThan(shown.length);
  });

  test('what is printed into the margins', async () => {
    const page = await lay(browser, BEARING, { what: 'sheet', narrative: 'no' });
    await addRule(page, '@page { margin: 18mm 13mm }');
    expect(findOver(await drawPages(await printPdf(page))).length).toBeGreaterThan(0);
  });
});

async function addRule(page: Page, rule: string): Promise<void> {
  await page.evaluate((text) => {
    const rules = new CSSStyleSheet();
    rules.replaceSync(text);
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, rules];
  }, rule);
}

test('without narrative and working the figures are the same', async () => {
  const whole = await lay(browser, BEARING, { what: 'sheet' });
  const shown = await takePictures(whole, FIGURES);
  const page = await lay(browser, BEARING, { what: 'sheet', narrative: 'no', working: 'no' });
  const pages = await drawPages(await printPdf(page));
  expect(findMissing(pages, shown)).toEqual([]);
});

test('from the dark page comes the same print as from the light one', async () => {
  const prints = await Promise.all(
    (['light', 'dark'] as const).map(async (colorScheme) => {
      const page = await lay(browser, BEARING, { what: 'sheet', narrative: 'no' }, { colorScheme });
      return drawPages(await printPdf(page));
    }),
  );
  const [light, dark] = prints.map((pages) => pages.map(({ grey }) => Buffer.from(grey)));
  expect(dark!.length).toBe(light!.length);
  expect(dark!.map((page, i) => page.equals(light![i]!))).toEqual(light!.map(() => true));
});

test('in grey all words of a figure stand out from their ground', async () => {
  const fine = 3;
  const page = await lay(browser, BEARING, { what: 'sheet', narrative: 'no' });
  const shown = await takePictures(page, FIGURES);
  const file = await printPdf(page);
  const [pages, large] = [await drawPages(file), await drawPages(file, fine)];
  const faint = shown.flatMap(({ picture, left, words }) => {
    const found = findPicture(pages, picture, left);
    return words
      .filter(({ text, width }) => text.trim() !== '' && width > 0)
      .filter(({ x, y, width, height }) => {
        const [atX, atY, wide, high] = [left + x, found.top + y, width, height].map((px) =>
          Math.max(0, Math.round(px * fine)),
        );
        const { grey } = crop(large[found.page]!, atX!, atY!, wide!, high!);
        return contrast(least(grey), most(grey)) < 4.5;
      })
      .map(({ text }) => text);
  });
  expect(faint).toEqual([]);
});

const least = (grey: Uint8Array) => grey.reduce((a, b) => Math.min(a, b));
const most = (grey: Uint8Array) => grey.reduce((a, b) => Math.max(a, b));

/** Of two greys. Source: WCAG 2.2, relative luminance. */
function contrast(dark: number, light: number): number {
  const [low, high] = [dark, light].map((grey) => {
    const share = grey / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return (high! + 0.05) / (low! + 0.05);
}

test('the measuring sheet of the worked example is that of a blank job, but for its head', async () => {
  const example = await lay(browser, BEARING, { what: 'measure-sheet' });
  const { page: blank } = await openApp(browser, BEARING);
  await blank.getByRole('button', { name: 'Start blank' }).click();
  await blank.getByText('New job').first().waitFor({ state: 'attached' });
  await layOpen(blank, { what: 'measure-sheet' });
  const [first, second] = await Promise.all(
    [example, blank].map(async (page) => {
      const pages = await drawPages(await printPdf(page));
      return pages.map((one) =>
        Buffer.from(crop(one, 0, ABOVE - 2, one.width, one.height - ABOVE + 2).grey),
      );
    }),
  );
  expect(second!.length).toBe(first!.length);
  expect(second!.map((page, i) => page.equals(first![i]!))).toEqual(first!.map(() => true));
});

test('a short job is printed with a code that another device reads', async () => {
  const { page } = await openApp(browser, BEARING);
  await page.getByRole('button', { name: 'Worked example' }).click();
  await layOpen(page, { what: 'sheet', narrative: 'no' });
  const pages = await drawPages(await printPdf(page), 2);
  const { width, height, grey } = pages[0]!;
  const colours = Uint8ClampedArray.from({ length: 4 * grey.length }, (_, i) =>
    i % 4 === 3 ? 255 : grey[i >> 2]!,
  );
  const link = jsQR(colours, width, height)!.data;
  const address = inject('appAddress');
  expect(link.slice(0, address.length)).toBe(address);
  expect(parseLink(new URL(link).hash).ok).toBe(true);
});

test('a job too long for a link is printed with what to take in its place', async () => {
  const page = await lay(browser, BEARING, { what: 'sheet', narrative: 'no' });
  expect(await page.locator('.paper-code svg').count()).toBe(0);
  const words = readPdf(await printPdf(page))
    .at(-1)!
    .text.replaceAll(/\s+/g, ' ');
  expect(words).toMatch(/As a link this job would have [\d,]+ characters\..*hand over the file/);
});
