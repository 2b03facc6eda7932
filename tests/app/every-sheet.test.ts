import { readdirSync } from 'node:fs';
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openBrowser } from '../support/open-browser.ts';
import { findBarriers } from './find-barriers.ts';
import { type OpenApp, openApp } from './open-app.ts';

const SHEETS = readdirSync('notebooks').map((file) => file.replace(/\.md$/, ''));

let browser: Browser;

beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

async function waitForDrawings(page: Page): Promise<void> {
  await page.waitForFunction(() =>
    [...document.querySelectorAll('.plot, .drawn')]
      .filter((place) => place.checkVisibility())
      .every((place) => place.querySelector('svg, .failed') !== null || place.clientWidth === 0),
  );
  await page.waitForFunction(() =>
    [...document.querySelectorAll('.later')].every((place) => place.childElementCount > 0),
  );
}

/** Whatever reaches beyond the right edge, apart from what scrolls in a box of its own. */
async function findWide(page: Page, width: number): Promise<readonly string[]> {
  await page.setViewportSize({ width, height: 900 });
  await waitForDrawings(page);
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(done))));
  return page.evaluate(() => {
    const wide = [...document.querySelectorAll('main *')].filter(
      (element) =>
        element.getBoundingClientRect().right > innerWidth + 1 &&
        element.checkVisibility() &&
        element.closest('.wide, .formula, svg, .unseen') === null,
    );
    const page = document.documentElement.scrollWidth;
    return [
      ...(page > innerWidth ? [`the page is ${page} px wide`] : []),
      ...wide.map((element) => element.outerHTML.slice(0, 120)),
    ];
  });
}

/** Words and lines of a drawing that lie outside of it. */
async function findCut(page: Page): Promise<readonly string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll('main figure svg')].flatMap((svg) => {
      const frame = svg.getBoundingClientRect();
      if (frame.width === 0) return [];
      return [...svg.querySelectorAll('text')]
        .map((text) => ({ text, box: text.getBoundingClientRect() }))
        .filter(({ box }) => box.width > 0)
        .filter(({ box }) => box.left < -1 || box.right > innerWidth + 1)
        .map(({ text }) => `${svg.querySelector('title')?.textContent}: ${text.textContent}`);
    }),
  );
}

describe.each(SHEETS)('%s', (sheet) => {
  let app: OpenApp;

  beforeAll(async () => {
    app = await openApp(browser, sheet, { viewport: { width: 1440, height: 900 } });
    await waitForDrawings(app.page);
  });
  afterAll(() => app.page.context().close());

  test('opens with nothing wrong in it', async () => {
    expect(await app.page.locator('.problems, .trouble, .failed').allTextContents()).toEqual([]);
    expect(app.errors).toEqual([]);
  });

  test('has one title and no heading that skips a level', async () => {
    const levels = await app.page.evaluate(() =>
      [...document.querySelectorAll('h1, h2, h3, h4, h5, h6')].map((one) => Number(one.tagName[1])),
    );
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    expect(levels.filter((level, i) => level > (levels[i - 1] ?? 0) + 1)).toEqual([]);
  });

  test('names each of its places once', async () => {
    const twice = await app.page.evaluate(() => {
      const ids = [...document.querySelectorAll('[id]')].map(({ id }) => id);
      return ids.filter((id, i) => ids.indexOf(id) !== i);
    });
    expect(twice).toEqual([]);
  });

  test('has a place for each link within it', async () => {
    const lost = await app.page.evaluate((name) => {
      const links = [...document.querySelectorAll(`main a[href^="#/${name}/"]`)];
      return links
        .map((link) => link.getAttribute('href')!)
        .filter((href) => document.getElementById(href.split('/')[2]!) === null);
    }, sheet);
    expect(lost).toEqual([]);
  });

  test.each([1440, 820, 390, 320])('needs no scrolling sideways at %i px', async (width) => {
    expect(await findWide(app.page, width)).toEqual([]);
    expect(await findCut(app.page)).toEqual([]);
  });

  test('axe finds nothing on it', async () => {
    await app.page.setViewportSize({ width: 1440, height: 900 });
    await waitForDrawings(app.page);
    expect(await findBarriers(app.page)).toEqual([]);
  });

  test('its colours keep their contrast in the dark', async () => {
    await app.page.emulateMedia({ colorScheme: 'dark' });
    await waitForDrawings(app.page);
    expect(await findBarriers(app.page, ['color-contrast', 'link-in-text-block'])).toEqual([]);
  });

  test('prints without a cut figure', async () => {
    // A4 less its margins, at 96 px an inch.
    await app.page.setViewportSize({ width: 680, height: 1000 });
    await app.page.emulateMedia({ media: 'print', colorScheme: 'light' });
    await waitForDrawings(app.page);
    const wide = await app.page.evaluate(() =>
      [...document.querySelectorAll('main *')]
        .filter(
          (element) => element.checkVisibility() && element.getBoundingClientRect().right > 681,
        )
        .filter((element) => element.closest('.formula, .wide') === null)
        .map((element) => element.outerHTML.slice(0, 120)),
    );
    const tall = await app.page.evaluate(() =>
      [...document.querySelectorAll('main figure')]
        .filter((figure) => figure.getBoundingClientRect().height > 980)
        .map((figure) => figure.outerHTML.slice(0, 120)),
    );
    expect({ wide, tall }).toEqual({ wide: [], tall: [] });
    await app.page.emulateMedia({ media: 'screen' });
  });

  test('wrote nothing to the console all the while', () => {
    expect(app.errors).toEqual([]);
  });
});
