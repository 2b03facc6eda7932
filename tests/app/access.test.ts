import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openBrowser } from '../support/open-browser.ts';
import { findBarriers } from './find-barriers.ts';
import { BEARING, enter, openApp, SHEETS } from './open-app.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

async function waitForCharts(page: Page): Promise<void> {
  const charts = await page.locator('figure.chart').count();
  await expect.poll(() => page.locator('figure.chart svg').count()).toBeGreaterThanOrEqual(charts);
}

const THEMES = ['light', 'dark'] as const;

test.each(THEMES)('axe finds nothing where things have gone wrong, %s', async (colorScheme) => {
  const { page } = await openApp(browser, BEARING, { colorScheme });
  await enter(page, 'finger_reading', 'about three');
  await enter(page, 'wanted_gap', '0.300');
  await page.locator('.waits').first().waitFor();
  await page.locator('summary').first().click();
  expect(await findBarriers(page)).toEqual([]);
});

test.each(SHEETS)('%s needs no scrolling sideways at 320 px, all unfolded', async (sheet) => {
  const { page } = await openApp(browser, sheet, { viewport: { width: 320, height: 700 } });
  await waitForCharts(page);
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll('main details')) fold.setAttribute('open', '');
  });
  const widths = await page.evaluate(() => {
    const wide = [...document.querySelectorAll('main *')].filter(
      (element) =>
        element.getBoundingClientRect().right > innerWidth + 1 &&
        element.closest('.wide, .formula, .route ol') === null &&
        element.closest('svg') === null,
    );
    return {
      page: document.documentElement.scrollWidth,
      wide: wide.map((element) => element.outerHTML.slice(0, 120)),
    };
  });
  expect(widths).toEqual({ page: 320, wide: [] });
});

test.each([320, 390, 820, 1440])(
  'at %i px every target is large enough for a finger',
  async (width) => {
    const { page } = await openApp(browser, BEARING, { viewport: { width, height: 900 } });
    const small = await page.evaluate(() => {
      const targets = document.querySelectorAll(
        'button, select, summary, .entry, .switch label, .stop, .steps label, .onward a, .brand',
      );
      return [...targets]
        .filter((target) => target.checkVisibility())
        .map((target) => ({ target, box: target.getBoundingClientRect() }))
        .filter(({ box }) => box.height < 43.5 || box.width < 43.5)
        .map(({ target, box }) => `${target.outerHTML.slice(0, 80)} ${box.width} × ${box.height}`);
    });
    expect(small).toEqual([]);
  },
);

test('the keyboard reaches the sheet by the first link, and the fields after it', async () => {
  const { page } = await openApp(browser, BEARING);
  await page.keyboard.press('Tab');
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Skip to the sheet');
  await page.keyboard.press('Enter');
  const stops: (string | undefined)[] = [];
  // What stands at a glance comes first, a link each.
  for (let i = 0; i < 40 && stops.at(-1) !== 'finger_reading'; i++) {
    await page.keyboard.press('Tab');
    stops.push(await page.evaluate(() => document.activeElement?.id));
  }
  expect(stops).toContain('finger_reading');
  expect(new URL(page.url()).hash).toBe(`#/${BEARING}`);
});

test('opening another sheet puts the focus on its title', async () => {
  const { page } = await openApp(browser, BEARING);
  await page.getByRole('link', { name: /^20/ }).first().click();
  await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe('H1');
  expect(await page.title()).toBe('Gearing · Layshaft');
});

test('a slider answers to arrow keys by its step', async () => {
  const { page } = await openApp(browser, BEARING);
  const slider = page.getByRole('slider', { name: 'Gap to set' });
  await slider.focus();
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => page.locator('#wanted_gap').inputValue()).toBe('0.155');
});

test('in the colours of the system the units that hold are told from the others', async () => {
  const { page } = await openApp(browser, BEARING, { forcedColors: 'active' });
  const letters = () =>
    page
      .locator('.switch label')
      .evaluateAll((all) => all.map((one) => getComputedStyle(one).color));
  const [inch, metric] = await letters();
  expect(inch).not.toBe(metric);
  await page.locator('.switch input[value=metric]').check();
  expect(await letters()).toEqual([metric, inch]);
});

test('the page can be turned dark by hand and remembers it', async () => {
  const { page } = await openApp(browser, BEARING, { colorScheme: 'light' });
  await page.getByRole('button', { name: 'Dark page' }).click();
  await page.reload();
  await page.getByRole('button', { name: 'Light page' }).waitFor();
  const background = await page.evaluate(
    () => getComputedStyle(document.documentElement).backgroundColor,
  );
  expect(background).toBe('rgb(21, 25, 27)');
});

test('on paper entries are text, cautions stand, and the tools are gone', async () => {
  const { page } = await openApp(browser, BEARING);
  await enter(page, 'finger_reading', '3 1/8');
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('#finger_reading').isVisible()).toBe(false);
  expect(await page.locator('.entry .print-only').first().textContent()).toBe('3 1/8');
  expect(await page.locator('.caution').first().isVisible()).toBe(true);
  expect(await page.locator('header').isVisible()).toBe(false);
  expect(await page.locator('.slider').first().isVisible()).toBe(false);
});

test.each(THEMES)('axe finds nothing on the page of jobs, %s', async (colorScheme) => {
  const { page } = await openApp(browser, BEARING, { colorScheme });
  await enter(page, 'finger_reading', '3 1/4');
  await page.getByRole('link', { name: 'Jobs', exact: true }).click();
  await page.getByRole('heading', { name: 'Jobs', level: 1 }).waitFor();
  for (const summary of await page.locator('main summary').all()) await summary.click();
  expect(await findBarriers(page)).toEqual([]);
});

test('axe finds nothing on the first screen and its tour', async () => {
  const { page } = await openApp(browser, '');
  expect(await findBarriers(page)).toEqual([]);
  await page.getByRole('button', { name: 'Show me round' }).click();
  // The tour lies over the foot of the page; what it hides for the while is judged without it.
  expect(await findBarriers(page, undefined, '.tour')).toEqual([]);
  await page.keyboard.press('Escape');
  expect(await page.locator('.tour').count()).toBe(0);
});

test('the note of a block that is not there yet lies over no other', async () => {
  const { page } = await openApp(browser, '');
  await waitForCharts(page);
  const over = await page.evaluate(() => {
    for (const later of document.querySelectorAll('.later')) later.replaceChildren();
    const boxes = [...document.querySelectorAll('.note summary')]
      .filter((note) => note.checkVisibility())
      .map((note) => note.getBoundingClientRect());
    const pairs = boxes.slice(1).map((box, i) => [boxes[i]!, box] as const);
    return { notes: boxes.length, over: pairs.filter(([a, b]) => b.top < a.bottom - 0.5).length };
  });
  expect(over.notes).toBeGreaterThan(3);
  expect(over.over).toBe(0);
});

test('the page of jobs fits 320 px, and each target is large enough for a finger', async () => {
  const { page } = await openApp(browser, 'jobs', { viewport: { width: 320, height: 700 } });
  await page.getByRole('heading', { name: 'Jobs', level: 1 }).waitFor();
  const found = await page.evaluate(() => {
    const targets = document.querySelectorAll(
      'main button, main summary, main input, main textarea, main .button',
    );
    const small = [...targets]
      .filter((target) => target.checkVisibility())
      .filter(
        (target) => (target.closest('.entry') ?? target).getBoundingClientRect().height < 43.5,
      );
    return {
      page: document.documentElement.scrollWidth,
      small: small.map((target) => target.outerHTML.slice(0, 90)),
    };
  });
  expect(found).toEqual({ page: 320, small: [] });
});
