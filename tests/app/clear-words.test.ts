import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openBrowser } from '../support/open-browser.ts';
import { GEARING, type OpenApp, openApp } from './open-app.ts';

const COUNTER = '10-the-car-and-the-job';
const FEEL = '25-what-it-will-feel-like';
const GUIDE = '00-how-a-sheet-works';

let browser: Browser;

beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

function open(sheet: string, width: number): Promise<OpenApp> {
  return openApp(browser, sheet, { viewport: { width, height: 900 } });
}

/** How many lines the words of each element take. */
async function countLines(page: Page, selector: string): Promise<readonly number[]> {
  await page.waitForSelector(selector);
  return page.$$eval(selector, (found) =>
    found.flatMap((element) => {
      const words = document.createTreeWalker(element, NodeFilter.SHOW_TEXT);
      const counts: number[] = [];
      while (words.nextNode()) {
        const range = document.createRange();
        range.selectNodeContents(words.currentNode);
        counts.push(range.getClientRects().length);
      }
      return counts.filter((count) => count > 0);
    }),
  );
}

describe('on a phone', () => {
  let app: OpenApp;
  let guide: OpenApp;

  beforeAll(async () => {
    app = await open(COUNTER, 390);
    guide = await open(GUIDE, 390);
  });
  afterAll(async () => {
    await app.page.context().close();
    await guide.page.context().close();
  });

  test('a verdict stands on one line with its mark', async () => {
    const lines = await countLines(app.page, '.checks tbody td:last-child:not(.meaning)');
    expect(lines.length).toBeGreaterThan(5);
    expect(new Set(lines)).toEqual(new Set([1]));
  });

  test('a head that wraps stays clear of the rule above it', async () => {
    const gap = await app.page.$eval('.glance-head > b', (head) => {
      const words = document.createRange();
      words.selectNodeContents(head);
      const { top } = words.getBoundingClientRect();
      return top - document.querySelector('.glance')!.getBoundingClientRect().top;
    });
    expect(gap).toBeGreaterThan(8);
  });

  test('when a step was signed stands below it', async () => {
    const below = await app.page.$$eval('.steps li label', (steps) =>
      steps.map((step) => {
        const words = step.querySelector('span')!.getBoundingClientRect();
        const day = step.querySelector('time')!.getBoundingClientRect();
        return { isBelow: day.top >= words.bottom - 1, isWide: words.width > step.clientWidth / 2 };
      }),
    );
    expect(below.length).toBeGreaterThan(3);
    for (const step of below) expect(step).toEqual({ isBelow: true, isWide: true });
  });

  test('a word in the tables of the guide is in one piece', async () => {
    const whole = await guide.page.$$eval('td:first-child code', (codes) =>
      codes
        .filter((code) => /^\w+$/.test(code.textContent ?? '') && !code.textContent!.includes('_'))
        .map((code) => code.getClientRects().length),
    );
    expect(whole.length).toBeGreaterThan(10);
    expect(new Set(whole)).toEqual(new Set([1]));
  });
});

test.each([390, 1440])('at %d px no row of a choice is cut', async (width) => {
  const { page } = await open(GEARING, width);
  await page.waitForSelector('.entry select');
  const room = await page.$$eval('.entry select', (selects) =>
    (selects as HTMLSelectElement[]).map((select) => {
      const style = getComputedStyle(select);
      const pen = document.createElement('canvas').getContext('2d')!;
      pen.font = style.font;
      const longest = Math.max(
        ...[...select.options].map((one) => pen.measureText(one.text).width),
      );
      const arrow = 16;
      const inside = select.clientWidth - parseFloat(style.paddingLeft) - arrow;
      return inside - longest;
    }),
  );
  expect(Math.min(...room)).toBeGreaterThan(0);
  await page.context().close();
});

test('at 820 px the buttons of the header are one line each', async () => {
  const { page } = await open(GEARING, 820);
  const lines = await countLines(page, '.head .switch label, .head .tool');
  expect(lines.length).toBeGreaterThan(3);
  expect(new Set(lines)).toEqual(new Set([1]));
  await page.context().close();
});

test('the cases of a formula are not cut where there is no room for them', async () => {
  const { page } = await open(FEEL, 390);
  await page.waitForSelector('.formula mtd');
  const cut = await page.$$eval('.formula mtd', (cells) =>
    cells
      .filter((cell) => {
        const words = document.createRange();
        words.selectNodeContents(cell);
        return words.getBoundingClientRect().height > cell.getBoundingClientRect().height + 1;
      })
      .map((cell) => cell.textContent),
  );
  expect(cut).toEqual([]);
  await page.context().close();
});

test('at 1440 px every table of the write-up has room', async () => {
  const { page } = await open('140-write-up', 1440);
  await page.waitForSelector('table.figures');
  const narrow = await page.$$eval('.wide:has(> table)', (boxes) =>
    boxes
      .filter((box) => box.scrollWidth > box.clientWidth)
      .map((box) => box.getAttribute('aria-label')),
  );
  expect(narrow).toEqual([]);
  await page.context().close();
});
