import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openBrowser } from '../support/open-browser.ts';
import { answer, BEARING, enter, GEARING, openApp } from './open-app.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

async function expectAnswer(page: Page, name: string, text: string): Promise<void> {
  await expect.poll(() => answer(page, name)).toBe(text);
}

test('a newcomer meets a finished example', async () => {
  const { page } = await openApp(browser, '');
  expect(await page.getByRole('heading', { level: 1 }).textContent()).toContain('Gearing');
  expect(await answer(page, 'tyre_diameter')).toBe('24.69 in');
  expect(await page.getByText('This is a worked example').isVisible()).toBe(true);
});

test.each([
  ['3 1/8', '0.078 in'],
  ['3-1/8"', '0.078 in'],
  ['80.6 mm', '0.126 in'],
  ['3,212', undefined],
  ['3.211; 3.214; 3.211', '0.165 in'],
  ['3125 thou', '0.078 in'],
  ['-3', '−6.047 in'],
])('a reading typed as %s is understood', async (text, gap) => {
  const { page } = await openApp(browser, BEARING);
  await enter(page, 'finger_reading', text);
  if (gap === undefined)
    expect(await page.locator('#finger_reading-error').textContent()).toMatch(/Error/);
  else await expectAnswer(page, 'gap', gap);
  expect(await page.locator('#finger_reading').inputValue()).toBe(text);
});

test('what cannot be read stays in the field with a sentence, and what hangs on it waits', async () => {
  const { page } = await openApp(browser, BEARING);
  await enter(page, 'finger_reading', 'about three');
  const error = page.locator('#finger_reading-error');
  await expect.poll(() => error.textContent()).toMatch(/^Error: /);
  expect(await page.locator('#finger_reading').inputValue()).toBe('about three');
  expect(await page.locator('#finger_reading').getAttribute('aria-invalid')).toBe('true');
  const waits = page.locator('#collar_turns .waits');
  expect(await waits.textContent()).toMatch(/^waits for .*finger/);
  expect(await answer(page, 'cushion')).toBe('0.030 in');
});

test('the link in "waits for" leads to the field that is wanting', async () => {
  const { page } = await openApp(browser, BEARING);
  await enter(page, 'finger_reading', '');
  await page.locator('#collar_turns .waits a').click();
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('finger_reading');
});

test('Escape brings back what was there', async () => {
  const { page } = await openApp(browser, BEARING);
  const field = page.locator('#wanted_gap');
  await field.fill('nonsense');
  await field.press('Escape');
  expect(await field.inputValue()).toBe('0.150');
});

test('what was entered and ticked survives a reload', async () => {
  const { page } = await openApp(browser, BEARING);
  await enter(page, 'finger_reading', '3 1/4');
  // The demo's steps are all signed: taking one back is a change as well.
  const step = page.locator('.steps input[type=checkbox]').first();
  await step.uncheck();
  await page.reload();
  expect(await page.locator('#finger_reading').inputValue()).toBe('3 1/4');
  expect(await answer(page, 'gap')).toBe('0.203 in');
  await step.waitFor();
  expect(await step.isChecked()).toBe(false);
  expect(await page.getByText('This is a worked example').isVisible()).toBe(false);
});

test('undo and redo go through entries, ticks and units, by button and by key', async () => {
  const { page } = await openApp(browser, BEARING);
  await enter(page, 'wanted_gap', '0.160');
  const step = page.locator('.steps input[type=checkbox]').first();
  await step.uncheck();
  await page.getByRole('radio', { name: 'metric, mm' }).check();
  await expectAnswer(page, 'gap', '4.19 mm');
  await page.getByRole('button', { name: 'Undo: units to metric' }).click();
  await expectAnswer(page, 'gap', '0.165 in');
  await page.locator('h1').focus();
  await page.keyboard.press('Control+z');
  expect(await step.isChecked()).toBe(true);
  await page.getByRole('button', { name: /^Undo: Gap to set, 0\.150 in to 0\.160 in$/ }).click();
  expect(await page.locator('#wanted_gap').inputValue()).toBe('0.150');
  await page.keyboard.press('Control+Shift+z');
  await expect.poll(() => page.locator('#wanted_gap').inputValue()).toBe('0.160');
});

test('the units of the page change the results, not what was typed', async () => {
  const { page } = await openApp(browser, BEARING);
  await enter(page, 'finger_reading', '3.25');
  await page.getByRole('radio', { name: 'metric, mm' }).check();
  await expectAnswer(page, 'gap', '5.16 mm');
  expect(await page.locator('#finger_reading').inputValue()).toBe('3.25 in');
  await enter(page, 'bearing_reading', '77.4');
  await expectAnswer(page, 'gap', '5.15 mm');
  await page.getByRole('radio', { name: 'inch-pound, in' }).check();
  expect(await page.locator('#finger_reading').inputValue()).toBe('3.25');
  expect(await page.locator('#bearing_reading').inputValue()).toBe('77.4 mm');
  await expectAnswer(page, 'gap', '0.203 in');
});

test('a tyre stays so many millimetres wide on an inch-pound page', async () => {
  const { page } = await openApp(browser, GEARING);
  await enter(page, 'tyre_width', '225');
  await expectAnswer(page, 'tyre_diameter', '25.63 in');
});

test('a gear set can be picked, or typed in place of a pick', async () => {
  const { page } = await openApp(browser, GEARING);
  await page.locator('#gear_ratios').selectOption('Six-speed');
  await expect.poll(() => page.locator('#ratios dd').count()).toBe(6);
  await page.locator('#gear_ratios').selectOption({ label: 'my own, typed below' });
  await enter(page, 'gear_ratios-own', '[2.95, 1.95, 1.35]');
  await expect
    .poll(() => page.locator('#ratios dd').allTextContents())
    .toEqual(['2.95', '1.95', '1.35']);
});

test('a chart is drawn again while a slider is dragged, and the drag is one step', async () => {
  const { page } = await openApp(browser, GEARING);
  const chart = page.locator('figure.chart').first();
  await chart.locator('svg').waitFor();
  const before = await chart.locator('figcaption').textContent();
  const slider = page.getByRole('slider', { name: 'Cruising speed' });
  await slider.scrollIntoViewIfNeeded();
  const box = (await slider.boundingBox())!;
  const y = box.y + box.height / 2;
  await page.mouse.move(box.x + box.width * 0.47, y);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width * 0.7, y, { steps: 5 });
  await expect.poll(() => chart.locator('figcaption').textContent()).not.toBe(before);
  await page.mouse.up();
  await page.getByRole('button', { name: /^Undo: Cruising speed, 70 mph to/ }).click();
  await expect.poll(() => chart.locator('figcaption').textContent()).toBe(before);
});

test('a value beyond the range of its slider is taken, and said to be outside', async () => {
  const { page } = await openApp(browser, BEARING);
  await enter(page, 'wanted_gap', '0.300');
  await expect
    .poll(() => page.locator('#wanted_gap-echo').textContent())
    .toContain('outside the usual range');
  await expectAnswer(page, 'out_by', '−0.135 in');
});

test('what is entered on one sheet is carried to the other', async () => {
  const { page } = await openApp(browser, BEARING);
  await enter(page, 'wanted_gap', '0.140');
  await page
    .getByRole('link', { name: /How a sheet works/ })
    .first()
    .click();
  await expect.poll(() => page.locator('#target strong').textContent()).toMatch(/0\.140/);
});

test('a check that fails is told in words, under the gauge and on the route', async () => {
  const { page } = await openApp(browser, BEARING);
  await enter(page, 'finger_reading', '3.000');
  const verdict = page.locator('.verdict.fails').first();
  await expect.poll(() => verdict.textContent()).toMatch(/less than the least allowed/);
  const stop = page.getByRole('navigation', { name: 'The job' }).locator('[aria-current]');
  expect(await stop.textContent()).toMatch(/fail/);
});

test('starting blank leaves nothing but what has a source, and can be undone', async () => {
  const { page } = await openApp(browser, BEARING);
  await page.getByRole('button', { name: 'Start blank' }).first().click();
  await expect.poll(() => page.locator('#finger_reading').inputValue()).toBe('');
  expect(await page.locator('#gap .waits, #gap ~ .waits').first().textContent()).toMatch(
    /waits for/,
  );
  await page.getByRole('button', { name: /^Undo: start blank/ }).click();
  await expectAnswer(page, 'gap', '0.165 in');
});

test('a job of an earlier version is taken over; one that was damaged is kept to be downloaded', async () => {
  const { page } = await openApp(browser, BEARING);
  const entries = '{"70-release-bearing":{"finger_reading":{"text":"3 1/4","unit":"in"}}}';
  const old = `{"schema":1,"title":"Mine","system":"inch-pound","entries":${entries},"ticks":{}}`;
  await page.evaluate((text) => localStorage.setItem('layshaft/job/1', text), old);
  await page.reload();
  await expectAnswer(page, 'gap', '0.203 in');
  expect(await page.evaluate(() => localStorage.getItem('layshaft/job/1'))).toBeNull();
  await page.evaluate(() => localStorage.setItem('layshaft/job/1', '{"schema":1,"tit'));
  await page.reload();
  await expectAnswer(page, 'gap', '0.203 in');
  await page.goto(`${page.url().replace(/#.*/, '')}#/jobs`);
  await page.getByText('Could not be read, and is kept as it was found').waitFor();
});

test('the status tells once what a change did', async () => {
  const { page } = await openApp(browser, BEARING);
  await enter(page, 'wanted_gap', '0.160');
  await expect
    .poll(() => page.locator('.unseen[role=status]').textContent(), { timeout: 20_000 })
    .toMatch(/Gap less what is wanted: 0\.005.in\./);
});
