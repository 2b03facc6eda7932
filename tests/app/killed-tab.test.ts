import type { Browser, BrowserContext, Page } from 'playwright';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { openBrowser } from '../support/open-browser.ts';
import { BEARING, enter, openApp } from './open-app.ts';

const KILLS = 100;
/** Browsers side by side; each loses one tab after another. */
const AT_ONCE = 2;
/** A tab is killed at some moment of this time, in milliseconds from when it could be typed into. */
const LIFE = 1800;

let browser: Browser;

beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

interface Entered {
  readonly count: number;
  /** When the field had been left, in milliseconds. */
  readonly at: number;
}

/** Types one number after another until the tab is gone, which no handler of the page gets to know. */
async function typeUntilKilled(page: Page, from: number) {
  const entered: Entered[] = [];
  let isKilled = false;
  const killing = (async () => {
    await page.waitForTimeout(Math.random() * LIFE);
    const session = await page.context().newCDPSession(page);
    const crashed = page.waitForEvent('crash');
    isKilled = true;
    const killedAt = Date.now();
    session.send('Page.crash').catch(() => {});
    await crashed;
    return killedAt;
  })();
  for (let count = from + 1; !isKilled; count += 1) {
    const isEntered = await enter(page, 'finger_reading', format(count)).then(
      () => true,
      () => false,
    );
    if (isEntered && !isKilled) entered.push({ count, at: Date.now() });
  }
  return { entered, killedAt: await killing };
}

function format(count: number): string {
  return `3.${String(count).padStart(4, '0')}`;
}

/** What stands in the field when the app is opened again, as the number that it was typed as. */
async function reopen(context: BrowserContext): Promise<{ page: Page; kept: number }> {
  const page = await context.newPage();
  await page.goto(`${inject('appAddress')}#/${BEARING}`);
  const text = await page.locator('#finger_reading').inputValue();
  return { page, kept: Math.round((Number(text) - 3) * 10_000) };
}

async function killOneAfterAnother(kills: number) {
  const { page: first } = await openApp(browser, BEARING);
  const context = first.context();
  await enter(first, 'finger_reading', format(0));
  await first.getByText('Saved in this browser').waitFor();
  let page = first;
  let from = 0;
  const outcomes: { owed: number; last: number; kept: number }[] = [];
  for (let i = 0; i < kills; i += 1) {
    const { entered, killedAt } = await typeUntilKilled(page, from);
    const { page: next, kept } = await reopen(context);
    await page.close();
    const owed = entered.findLast(({ at }) => at <= killedAt - 1000)?.count ?? from;
    outcomes.push({ owed, last: entered.at(-1)?.count ?? from, kept });
    page = next;
    from = kept;
  }
  await context.close();
  return outcomes;
}

test(`of ${KILLS} tabs killed while they are typed into none loses what is older than a second`, async () => {
  const each = Array.from({ length: AT_ONCE }, () => killOneAfterAnother(KILLS / AT_ONCE));
  const outcomes = (await Promise.all(each)).flat();
  expect(outcomes).toHaveLength(KILLS);
  expect(outcomes.filter(({ kept, owed }) => kept < owed)).toEqual([]);
  // What was kept is a number that was typed; the very last may have been under way.
  expect(outcomes.filter(({ kept, last }) => kept > last + 1)).toEqual([]);
  // Most of them had something to lose.
  expect(outcomes.filter(({ owed }) => owed > 0).length).toBeGreaterThan(KILLS / 2);
}, 600_000);
