import type { Browser, Page } from 'playwright';
import { type OpenOptions, openApp } from './open-app.ts';

export interface Choices {
  readonly what: 'sheet' | 'job' | 'measure-sheet' | 'measure-job';
  readonly format?: 'A4' | 'letter';
  readonly narrative?: 'no';
  readonly working?: 'no';
}

/** Opens a sheet and lays what was chosen on paper. */
export async function lay(
  browser: Browser,
  sheet: string,
  choices: Choices,
  options: OpenOptions = {},
): Promise<Page> {
  const { page } = await openApp(browser, sheet, options);
  await layOpen(page, choices);
  return page;
}

/**
 * Lays what was chosen of the sheet that is open on paper and stops where the browser would open its
 * dialogue: a browser without a window has none, and would go on at once.
 */
export async function layOpen(page: Page, choices: Choices): Promise<void> {
  await page.evaluate('window.print = () => { document.body.dataset.prints = "1"; }');
  await page.getByText('On paper: sheets to print').click();
  const [what, format, narrative, working] = await fields(page);
  await what!.selectOption(choices.what);
  if (choices.format !== undefined) await format!.selectOption(choices.format);
  if (choices.narrative !== undefined) await narrative!.selectOption(choices.narrative);
  if (choices.working !== undefined) await working!.selectOption(choices.working);
  await page.locator('.to-paper button').click();
  await page.locator('body[data-prints]').waitFor({ timeout: 50_000 });
}

async function fields(page: Page) {
  const selects = page.locator('.to-paper select');
  await selects.nth(3).waitFor();
  return selects.all();
}

export async function printPdf(page: Page): Promise<Buffer> {
  return page.pdf({ preferCSSPageSize: true, printBackground: true });
}
