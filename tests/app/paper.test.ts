import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openBrowser } from '../support/open-browser.ts';
import { type PdfPage, readPdf } from '../support/pdf.ts';
import { lay, printPdf } from './lay-paper.ts';
import { BEARING, GEARING, openApp } from './open-app.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

/** In points, as PDF has them, and in px between margins of 15 mm at the sides and 18 mm above and below. */
const PAPERS = {
  A4: { points: [595, 842], room: [680, 986] },
  letter: { points: [612, 792], room: [702, 920] },
} as const;

/** Lines of a page as they were lettered, the parts of a line joined by blanks. */
function wordsOf(pages: readonly PdfPage[]): string {
  return pages
    .map(({ text }) => text)
    .join('\n')
    .replaceAll(/\s+/g, ' ');
}

async function textsOf(page: Page, selector: string): Promise<readonly string[]> {
  const texts = await page.locator(selector).allTextContents();
  return texts.map((text) => text.replaceAll(/\s+/g, ' ').trim());
}

/** What is wider than the paper, or higher, so that it would be cut. */
async function findCut(page: Page, format: keyof typeof PAPERS): Promise<readonly string[]> {
  const [width, height] = PAPERS[format].room;
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width, height });
  return page.locator('.paper :is(figure, svg, table, .caution)').evaluateAll(
    (all, [most, highest]) =>
      all
        .filter((one) => {
          const { left, right, height: high } = one.getBoundingClientRect();
          return left < -1 || right > most + 1 || (one.tagName !== 'TABLE' && high > highest);
        })
        .map((one) => `${one.tagName} ${one.textContent.slice(0, 60)}`),
    [width, height] as const,
  );
}

test('a sheet on A4: job, car, sheet, day and page on each page, no heading at a foot', async () => {
  const page = await lay(browser, BEARING, { what: 'sheet' });
  const headings = new Set(await textsOf(page, '.paper :is(h2, h3, h4)'));
  expect(headings.size).toBeGreaterThan(3);
  const file = await printPdf(page);
  const pages = readPdf(file);
  expect(pages.length).toBeGreaterThan(4);
  for (const [i, { width, height, text }] of pages.entries()) {
    expect([width, height].map(Math.round)).toEqual(PAPERS.A4.points);
    const words = wordsOf([pages[i]!]);
    expect(words).toMatch(/^Layshaft · .* · Quarry Lane estate 70 Setting the release bearing/);
    expect(words).toContain(`Page ${i + 1} of ${pages.length} `);
    expect(words).toMatch(/\d{1,2} \w+ 20\d\d/);
    const last = text.trim().split('\n').at(-1)!.trim();
    expect(headings.has(last), `page ${i + 1} ends with "${last}"`).toBe(false);
  }
});

test('on paper are entries and verdicts as text, a line to sign on, and nothing to press', async () => {
  const page = await lay(browser, BEARING, { what: 'sheet' });
  const words = wordsOf(readPdf(await printPdf(page)));
  expect(words).toContain('0.250 ± 0.001');
  expect(words).toContain('Inside the window.');
  expect(words).toMatch(/Signed Date/);
  expect(words).not.toMatch(/Fresh numbers|Add a note|To the readings|Print|Undo/);
});

test('gauges, chains and charts are lines on paper, and no pictures', async () => {
  const page = await lay(browser, BEARING, { what: 'sheet' });
  expect(await page.locator('.paper :is(.drawn, .plot) > svg').count()).toBeGreaterThan(5);
  const file = (await printPdf(page)).toString('latin1');
  expect(file).not.toContain('/Subtype /Image');
});

test.each(['A4', 'letter'] as const)('no figure of a sheet is cut on %s', async (format) => {
  const page = await lay(browser, '90-shifter-and-tunnel', { what: 'sheet', format });
  expect(await findCut(page, format)).toEqual([]);
});

test.each([GEARING, BEARING])('each figure of %s is on one page with its words', async (sheet) => {
  const page = await lay(browser, sheet, { what: 'sheet' });
  const figures = await page.locator('.paper figure').evaluateAll((all) =>
    all.map((figure) => {
      const lettered = [...figure.querySelectorAll('svg text, figcaption, .verdict')];
      return lettered.flatMap((one) => one.textContent.trim().split(/\s+/));
    }),
  );
  expect(figures.length).toBeGreaterThan(5);
  const pages = readPdf(await printPdf(page)).map(({ text }) => text.replaceAll(/\s+/g, ''));
  const torn = figures.filter(
    (words) => !pages.some((text) => words.every((one) => text.includes(one))),
  );
  expect(torn.map((words) => words.join(' '))).toEqual([]);
});

test('without narrative and working, on Letter: shorter, and with every caution', async () => {
  const long = await lay(browser, BEARING, { what: 'sheet', format: 'letter' });
  const whole = readPdf(await printPdf(long));
  const page = await lay(browser, BEARING, {
    what: 'sheet',
    format: 'letter',
    narrative: 'no',
    working: 'no',
  });
  const pages = readPdf(await printPdf(page));
  expect([pages[0]!.width, pages[0]!.height]).toEqual(PAPERS.letter.points);
  expect(pages.length).toBeLessThan(whole.length);
  const words = wordsOf(pages);
  expect(wordsOf(whole)).toContain('Press the pedal and the release bearing is pushed forward');
  expect(words).not.toContain('Press the pedal and the release bearing is pushed forward');
  expect(wordsOf(whole)).toContain('disc free');
  expect(words).not.toContain('disc free');
  expect(words).toContain('Nothing stops the piston of a bearing on the bench');
  expect(words).toContain('Wipe wet, wear a mask, and use no air line.');
});

test('after the print the sheet is there again, as it was', async () => {
  const page = await lay(browser, BEARING, { what: 'sheet' });
  expect(await page.locator('#layshaft-page').isVisible()).toBe(false);
  await printPdf(page);
  expect(await page.locator('.paper').count()).toBe(0);
  expect(await page.locator('#finger_reading').isVisible()).toBe(true);
  await page.locator('figure.chart svg').first().waitFor();
});

test('a measuring sheet has every reading in the order of the sheet, and none of the figures', async () => {
  const { page: open } = await openApp(browser, BEARING);
  const asked = await textsOf(open, '.given-name:has(.how) label');
  expect(asked.length).toBeGreaterThan(10);
  const page = await lay(browser, BEARING, { what: 'measure-sheet' });
  expect(await page.locator('.write-in').count()).toBe(asked.length);
  expect(await findCut(page, 'A4')).toEqual([]);
  const pages = readPdf(await printPdf(page));
  const words = wordsOf(pages);
  const places = asked.map((label) => words.indexOf(label));
  expect(places.every((place) => place > 0)).toBe(true);
  expect(places).toEqual([...places].sort((a, b) => a - b));
  expect(words).toContain('Nothing stops the piston of a bearing on the bench');
  expect(words).toContain('Measured by Date');
  expect(words).not.toContain('3.047');
  for (const { text } of pages) expect(text).toContain('Quarry Lane estate');
});

test('the measuring sheet of the whole job goes through the sheets in their order', async () => {
  const page = await lay(browser, BEARING, { what: 'measure-job' });
  const sheets = await textsOf(page, '.paper h2');
  const numbers = sheets.map((title) => Number.parseInt(title, 10));
  expect(numbers.length).toBeGreaterThan(5);
  expect(numbers).toEqual([...numbers].sort((a, b) => a - b));
  expect(wordsOf(readPdf(await printPdf(page)))).toContain(sheets.at(-1));
});

test('the whole job is all its sheets, each drawn and none cut', async () => {
  const page = await lay(browser, BEARING, { what: 'job', narrative: 'no' });
  expect(await page.locator('.paper-bar [role=status]').textContent()).toBe('Ready to print.');
  const stops = await page.locator('.route li').count();
  expect(await page.locator('.paper-sheet').count()).toBe(stops - 1);
  expect(await findCut(page, 'A4')).toEqual([]);
}, 120_000);

test('what the browser prints by itself tells the same in its margins', async () => {
  const { page } = await openApp(browser, BEARING);
  await page.locator('figure.chart svg').first().waitFor();
  const pages = readPdf(await printPdf(page));
  for (const [i, one] of pages.entries()) {
    const words = wordsOf([one]);
    expect(words).toMatch(/^Layshaft · .* · Quarry Lane estate Setting the release bearing/);
    expect(words).toContain(`Page ${i + 1} of ${pages.length} `);
  }
});

test('what the browser prints by itself says the job once, and nothing lies on what follows it', async () => {
  const { page } = await openApp(browser, BEARING);
  await page.locator('figure.chart svg').first().waitFor();
  await page.getByText('Add a note').first().waitFor();
  await page.setViewportSize({ width: 680, height: 986 });
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('.print-head').isVisible()).toBe(false);
  const laid = await page.locator('main').evaluate((main) => {
    const parts = [...main.querySelectorAll(':scope > *, :scope > .later > *')];
    return parts
      .map((part) => ({ text: part.textContent.slice(0, 40), box: part.getBoundingClientRect() }))
      .filter(({ box }) => box.height > 0)
      .map(({ text, box }) => ({ text, top: box.top, bottom: box.bottom }));
  });
  expect(laid.length).toBeGreaterThan(40);
  const lying = laid.filter(
    ({ bottom }, i) => i + 1 < laid.length && laid[i + 1]!.top < bottom - 0.5,
  );
  expect(lying).toEqual([]);
});

test('on a phone the way back is within reach', async () => {
  const { page } = await openApp(browser, BEARING, { viewport: { width: 390, height: 844 } });
  await page.evaluate('window.print = () => {}');
  await page.getByText('On paper: sheets to print').click();
  await page.locator('.to-paper button').click();
  const box = await page.getByRole('button', { name: 'Back to the page' }).boundingBox();
  expect(box!.x + box!.width).toBeLessThanOrEqual(390);
  await page.keyboard.press('Escape');
  expect(await page.locator('#finger_reading').isVisible()).toBe(true);
});
