import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { openBrowser } from '../support/open-browser.ts';
import { answer, BEARING, enter, openApp } from './open-app.ts';

let browser: Browser;
let folder: string;

beforeAll(async () => {
  browser = await openBrowser();
  folder = mkdtempSync(join(tmpdir(), 'layshaft-file-'));
  await build({ mode: 'file', logLevel: 'silent', build: { outDir: folder, emptyOutDir: true } });
}, 120_000);

afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
});

/** Waits until everything is on the device. */
async function waitForInstall(page: Page): Promise<void> {
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
}

describe('the installed app', () => {
  test('opens with the line cut after one visit: page, sheets, fonts and charts', async () => {
    const { page, errors } = await openApp(browser, BEARING);
    await waitForInstall(page);
    await page.context().setOffline(true);
    await page.reload();
    await page.locator('figure.chart svg').first().waitFor();
    expect(await answer(page, 'gap')).toBe('0.165 in');
    await page.getByRole('link', { name: 'Jobs', exact: true }).click();
    await page.getByRole('heading', { name: 'Jobs', level: 1 }).waitFor();
    expect(await page.evaluate(() => document.fonts.status)).toBe('loaded');
    expect(errors).toEqual([]);
  });

  test('keeps every file that was built, its own worker apart', async () => {
    const { page } = await openApp(browser, BEARING);
    await waitForInstall(page);
    const kept = await page.evaluate(async () => {
      const names = await caches.keys();
      const stores = await Promise.all(names.map((name) => caches.open(name)));
      const requests = await Promise.all(stores.map((store) => store.keys()));
      return requests.flat().map(({ url }) => new URL(url).pathname.slice(1));
    });
    const script = await (await fetch(new URL('sw.js', inject('appAddress')))).text();
    const listed = [...script.matchAll(/url"?:\s*["'`]([^"'`]+)/g)].map(([, file]) => file);
    expect(listed.length).toBeGreaterThan(30);
    expect([...kept].sort()).toEqual([...new Set(listed)].sort());
    expect(kept.filter((file) => file.endsWith('.md')).length).toBeGreaterThan(10);
    expect(kept.filter((file) => file.endsWith('.woff2')).length).toBeGreaterThan(3);
  });

  test('asks no other origin for anything, its worker included', async () => {
    const context = await browser.newContext();
    const asked: string[] = [];
    context.on('request', (request) => asked.push(request.url()));
    const page = await context.newPage();
    await page.goto(`${inject('appAddress')}#/${BEARING}`);
    await waitForInstall(page);
    await page.reload();
    await page.locator('figure.chart svg').first().waitFor();
    const { origin } = new URL(inject('appAddress'));
    expect(asked.length).toBeGreaterThan(30);
    expect(asked.filter((url) => !/^(data|blob):/.test(url) && !url.startsWith(origin))).toEqual(
      [],
    );
  });

  test('has what a device needs to install it', async () => {
    const address = new URL('manifest.webmanifest', inject('appAddress'));
    const manifest = await (await fetch(address)).json();
    expect(manifest).toMatchObject({ name: 'Layshaft', display: 'standalone', start_url: './' });
    for (const { src, sizes } of manifest.icons as { src: string; sizes: string }[]) {
      const icon = await fetch(new URL(src, address));
      expect(icon.headers.get('content-type')).toBe('image/png');
      const bytes = Buffer.from(await icon.arrayBuffer());
      expect(`${bytes.readUInt32BE(16)}x${bytes.readUInt32BE(20)}`).toBe(sizes);
    }
  });
});

describe('the one-file copy', () => {
  async function openFile(): Promise<{ page: Page; errors: string[]; asked: string[] }> {
    const context = await browser.newContext({ offline: true, locale: 'en-GB', timezoneId: 'UTC' });
    const page = await context.newPage();
    const errors: string[] = [];
    const asked: string[] = [];
    page.on('console', (message) => message.type() === 'error' && errors.push(message.text()));
    page.on('pageerror', (error) => errors.push(error.message));
    page.on('request', (request) => asked.push(request.url()));
    await page.goto(`${pathToFileURL(join(folder, 'layshaft.html'))}#/${BEARING}`);
    await page.locator('h1').waitFor();
    return { page, errors, asked };
  }

  test('is one file', () => {
    expect(readdirSync(folder)).toEqual(['layshaft.html']);
    expect(existsSync(join(folder, 'layshaft.html'))).toBe(true);
  });

  test('opens from a disk with the network off, works, draws, and keeps what is entered', async () => {
    const { page, errors, asked } = await openFile();
    await page.locator('figure.chart svg').first().waitFor();
    await enter(page, 'finger_reading', '3 1/4');
    await expect.poll(() => answer(page, 'gap')).toBe('0.203 in');
    await page.getByText('Saved in this browser').waitFor();
    await page.reload();
    expect(await page.locator('#finger_reading').inputValue()).toBe('3 1/4');
    expect(errors).toEqual([]);
    expect(
      asked.filter((url) => !/^(data|blob):/.test(url) && !/layshaft\.html/.test(url)),
    ).toEqual([]);
  });

  test('lets in the scripts that stand in it, by their hashes, and no others', async () => {
    const html = readFileSync(join(folder, 'layshaft.html'), 'utf8');
    const policy = /Content-Security-Policy"\s+content="([^"]*)"/.exec(html)![1]!;
    expect(policy).toMatch(/script-src 'sha256-[^']{44}'(;| 'sha256)/);
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toMatch(/unsafe-eval|script-src[^;]*unsafe|connect-src/);
    const { page } = await openFile();
    expect(await runStrangers(page)).toEqual({ inline: false, evaluated: false, fetched: false });
  });
});

/** Tries to run what is not the page's own. */
async function runStrangers(page: Page): Promise<Record<string, boolean>> {
  return page.evaluate(async () => {
    const mark = window as unknown as Record<string, unknown>;
    const script = document.createElement('script');
    script.textContent = 'window.strangerInline = 1';
    document.body.append(script);
    const evaluator = document.createElement('button');
    evaluator.setAttribute('onclick', 'window.strangerEvaluated = 1');
    document.body.append(evaluator);
    evaluator.click();
    const fetched = await fetch('https://example.org/').then(
      () => true,
      () => false,
    );
    return {
      inline: 'strangerInline' in mark,
      evaluated: 'strangerEvaluated' in mark,
      fetched,
    };
  });
}

test('the served page has a strict policy too', async () => {
  const html = await (await fetch(inject('appAddress'))).text();
  const policy = /Content-Security-Policy"\s+content="([^"]*)"/.exec(html)![1]!;
  expect(policy).toMatch(/default-src 'none'; script-src 'self';/);
  expect(policy).not.toMatch(/unsafe-eval|script-src[^;]*unsafe/);
  const { page } = await openApp(browser, BEARING);
  expect(await runStrangers(page)).toEqual({ inline: false, evaluated: false, fetched: false });
});
