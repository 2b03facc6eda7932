import type { Browser, BrowserContextOptions, Page } from 'playwright';
import { inject } from 'vitest';

export const GEARING = '20-gearing';
export const BEARING = '70-release-bearing';
export const SHEETS = ['00-how-a-sheet-works', GEARING, BEARING] as const;

/** A page with the app open in it, and what it did that it should not have done. */
export interface OpenApp {
  readonly page: Page;
  /** Errors in the console and those that nobody caught. */
  readonly errors: readonly string[];
  /** Addresses of all requests. */
  readonly requests: readonly string[];
}

export interface OpenOptions extends BrowserContextOptions {
  /** Text to be served in place of the gearing sheet. */
  readonly sheet?: string;
}

/** Opens the built app at a sheet in a context of its own: nothing is stored yet. */
export async function openApp(
  browser: Browser,
  sheet: string = GEARING,
  { sheet: text, ...options }: OpenOptions = {},
): Promise<OpenApp> {
  const context = await browser.newContext({
    locale: 'en-GB',
    timezoneId: 'UTC',
    reducedMotion: 'reduce',
    viewport: { width: 1280, height: 900 },
    ...options,
  });
  const page = await context.newPage();
  const app = { page, errors: [] as string[], requests: [] as string[] };
  page.on('console', (message) => message.type() === 'error' && app.errors.push(message.text()));
  page.on('pageerror', (error) => app.errors.push(error.message));
  page.on('request', (request) => app.requests.push(request.url()));
  if (text !== undefined) {
    await page.route('**/20-gearing*.md', (route) =>
      route.fulfill({ body: text, contentType: 'text/markdown; charset=utf-8' }),
    );
  }
  await page.goto(`${inject('appAddress')}#/${sheet}`);
  await page.getByRole('heading', { level: 1 }).waitFor();
  return app;
}

/** Types into a field and leaves it by Enter. */
export async function enter(page: Page, name: string, text: string): Promise<void> {
  const field = page.locator(`#${name}`);
  await field.fill(text);
  await field.press('Enter');
}

/** The answer under a formula or a stack, blanks as plain blanks. */
export async function answer(page: Page, name: string): Promise<string> {
  const text = await page.locator(`#${name} .answer strong`).textContent();
  return text!.replaceAll(/[\u00a0\u202f]/g, ' ');
}
