import { gzipSync } from 'node:zlib';
import type { Browser } from 'playwright';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { openBrowser } from '../support/open-browser.ts';
import { answer, BEARING, enter, GEARING, openApp, SHEETS } from './open-app.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

test.each(SHEETS)('%s asks no other origin for anything', async (sheet) => {
  const { page, requests } = await openApp(browser, sheet);
  await page.locator('figure.chart svg').first().waitFor();
  const { origin } = new URL(inject('appAddress'));
  expect(requests.filter((address) => !address.startsWith(origin))).toEqual([]);
});

test('once loaded, the page works with the cable out', async () => {
  const { page } = await openApp(browser, BEARING);
  await page.locator('figure.chart svg').first().waitFor();
  await page.context().setOffline(true);
  await enter(page, 'finger_reading', '3 1/4');
  await expect.poll(() => answer(page, 'gap')).toBe('0.203 in');
  await page.getByRole('link', { name: /^20/ }).first().click();
  await page.locator('figure.chart svg').first().waitFor();
  expect(await answer(page, 'tyre_diameter')).toBe('24.69 in');
});

test('the first results need no more than 100 kB of script', async () => {
  const { page } = await openApp(browser, GEARING);
  // What the page itself names is what results wait for; all else is loaded after them.
  const named = await page.evaluate(async () => {
    const served = new DOMParser().parseFromString(await (await fetch('./')).text(), 'text/html');
    const links = [...served.querySelectorAll('script[src], link[rel=modulepreload]')];
    return links.map((one) => one.getAttribute('src') ?? one.getAttribute('href')!);
  });
  const scripts = await Promise.all(
    named.map(async (path) => (await fetch(new URL(path, inject('appAddress')))).arrayBuffer()),
  );
  const packed = scripts.map((script) => gzipSync(new Uint8Array(script)).length);
  expect(packed.length).toBeGreaterThan(0);
  expect(packed.reduce((sum, size) => sum + size)).toBeLessThan(100_000);
});

const HOSTILE = `# Hostile

<script>window.hit = 1</script>

<img src=x onerror="window.hit = 1">

[a link](javascript:window.hit=1) and <a href="javascript:window.hit=1">another</a>

<style>* { display: none !important }</style>

<form action="https://example.org/"><input name="q"></form>

![](https://example.org/pixel.png)

\`\`\`caution "<img src=x onerror=window.hit=1>"
<script>window.hit = 1</script> Keep clear.
\`\`\`

\`\`\`given
width = 3 in "<script>window.hit = 1</script>" how "<b onclick=window.hit=1>x</b>"
\`\`\`

\`\`\`work
twice = 2 * width "<svg onload=window.hit=1>" as in
\`\`\`
`;

test('a hostile sheet is shown as text and does nothing', async () => {
  const { page, requests } = await openApp(browser, GEARING, { sheet: HOSTILE });
  expect(await page.locator('main').textContent()).toContain('<script>window.hit = 1</script>');
  expect(await page.locator('main').locator('script, img, style, form, iframe').count()).toBe(0);
  expect(await page.locator('main a[href^="javascript" i]').count()).toBe(0);
  await page.getByText('a link', { exact: false }).first().click();
  expect(await page.evaluate(() => 'hit' in window)).toBe(false);
  expect(requests.filter((address) => address.includes('example.org'))).toEqual([]);
  expect(await answer(page, 'twice')).toBe('6 in');
});

test('nothing is run that is not the page’s own', async () => {
  const { page } = await openApp(browser, GEARING);
  const ran = await page.evaluate(() => {
    const script = document.createElement('script');
    script.textContent = 'window.hit = 1';
    document.body.append(script);
    return 'hit' in window;
  });
  expect(ran).toBe(false);
});

const FENCE = '```';

test.each([
  ['a loop', `# A\n\n${FENCE}work\na = b + 1\nb = a + 1\n${FENCE}\n`, /a → b → a/],
  [
    'a ragged row',
    `# A\n\n${FENCE}table sizes "Sizes"\nname,size (in)\nshort,1,2\n${FENCE}\n`,
    /3 cells.*2 columns/,
  ],
  ['a block that never ends', `# A\n\n${FENCE}given\nwidth = 3 in\n`, /never closed/],
  [
    'ten thousand brackets',
    `# A\n\n${FENCE}work\na = ${'('.repeat(10_000)}1${')'.repeat(10_000)}\n${FENCE}\n`,
    /brackets/,
  ],
  ['an unknown name', `# A\n\n${FENCE}work\na = wdith + 1\n${FENCE}\n`, /no value is called wdith/],
  ['CRLF and a mistake', `# A\r\n\r\n${FENCE}work\r\na = 3 in + 2 rpm\r\n${FENCE}\r\n`, /line 4/],
])('a sheet with %s is told with its place, and the page lives', async (_, sheet, message) => {
  const { page, errors } = await openApp(browser, GEARING, { sheet });
  expect(await page.locator('.problems:not(.fit)').textContent()).toMatch(message);
  expect(errors).toEqual([]);
  await page.getByRole('link', { name: /^70/ }).first().click();
  await expect.poll(() => page.getByRole('heading', { level: 1 }).textContent()).toMatch(/bearing/);
  expect(await answer(page, 'gap')).toBe('0.165 in');
});

test.each([
  ['zero', 'axle_ratio', '0'],
  ['not a number', 'axle_ratio', 'NaN'],
  ['far too large', 'rim_diameter', '1e9 in'],
  ['nothing', 'rim_diameter', ''],
  ['letters', 'rim_diameter', 'fifteen'],
  ['a length where a speed belongs', 'cruise_speed', '3 in'],
  ['0 %', 'aspect_ratio', '0 %'],
])('%s typed into a field leaves the page alive', async (_, name, text) => {
  const { page, errors } = await openApp(browser, GEARING);
  await enter(page, name, text);
  await enter(page, 'redline', '6000');
  await expect.poll(() => page.locator('#redline').inputValue()).toBe('6000');
  expect(await page.locator(`#${name}`).inputValue()).toBe(text);
  expect(errors).toEqual([]);
});

test('a hundred thousand characters pasted are refused in a sentence and kept', async () => {
  const { page, errors } = await openApp(browser, BEARING);
  const long = '9'.repeat(100_000);
  await enter(page, 'finger_reading', long);
  await expect.poll(() => page.locator('#finger_reading-error').textContent()).toMatch(/100.?000/);
  expect((await page.locator('#finger_reading').inputValue()) === long).toBe(true);
  expect(errors).toEqual([]);
});

test('a full store is told loudly, stays, and the page works on', async () => {
  const { page } = await openApp(browser, BEARING);
  await page.evaluate(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await enter(page, 'finger_reading', '3 1/4');
  await expect
    .poll(() => page.getByRole('alert').textContent())
    .toMatch(/^Not saved: this browser has no room left/);
  expect(await answer(page, 'gap')).toBe('0.203 in');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Download the job' }).click();
  expect((await download).suggestedFilename()).toMatch(/\.job\.json$/);
});

test('a browser that lets the page keep nothing says so, and the page works', async () => {
  const context = await browser.newContext();
  await context.addInitScript(() => {
    const refuse = (): never => {
      throw new DOMException('denied', 'SecurityError');
    };
    Object.defineProperty(window, 'localStorage', { get: refuse });
    Object.defineProperty(window, 'sessionStorage', { get: refuse });
    Object.defineProperty(window, 'indexedDB', { get: refuse });
  });
  const page = await context.newPage();
  await page.goto(`${inject('appAddress')}#/${BEARING}`);
  await expect
    .poll(() => page.getByRole('alert').textContent())
    .toMatch(/does not let the page keep anything/);
  await enter(page, 'finger_reading', '3 1/4');
  await expect.poll(() => answer(page, 'gap')).toBe('0.203 in');
});

test('a job in a link opens as a copy, and a cut one says so', async () => {
  const { page } = await openApp(browser, BEARING);
  await page.getByRole('button', { name: 'Worked example' }).click();
  await enter(page, 'finger_reading', '3 1/4');
  await page.goto(`${inject('appAddress')}#/jobs`);
  const link = await page.locator('#job-link').inputValue();
  const other = await (await browser.newContext()).newPage();
  await other.goto(link);
  await other
    .getByRole('alert')
    .getByText(/^Opened from a link/)
    .waitFor();
  await other.goto(`${inject('appAddress')}#/${BEARING}`);
  await expect.poll(() => answer(other, 'gap')).toBe('0.203 in');
  await other.goto(link.slice(0, -9));
  await other
    .getByRole('alert')
    .getByText(/was cut off on its way/)
    .waitFor();
});

const MINE = `# A sheet of mine

${FENCE}given
shim = 0.030 in "Shim"
${FENCE}

${FENCE}work
two_shims = 2 * shim as in
${FENCE}
`;

test('a sheet in a link is taken into the open job, says so, works, and can be undone', async () => {
  const { page } = await openApp(browser, BEARING);
  await enter(page, 'finger_reading', '3 1/4');
  await page.getByText('Saved in this browser').waitFor();
  await page.goto(`${inject('appAddress')}#/jobs`);
  const file = { name: '75 mine.md', mimeType: 'text/markdown', buffer: Buffer.from(MINE) };
  await page.locator('#own-sheet').setInputFiles(file);
  await page.getByRole('heading', { name: 'A sheet of mine' }).waitFor();
  await page.goto(`${inject('appAddress')}#/jobs`);
  await page.getByRole('button', { name: 'Copy link to this sheet 75-mine' }).click();
  const link = await page.getByLabel('A link with the whole sheet in it').inputValue();

  const { page: other, errors } = await openApp(browser, BEARING);
  await enter(other, 'finger_reading', '3 1/8');
  await expect.poll(() => answer(other, 'gap')).toBe('0.078 in');
  await other.goto(link);
  await other.getByRole('heading', { name: 'A sheet of mine' }).waitFor();
  await other
    .getByRole('alert')
    .getByText(/^The sheet 75-mine was taken into the job/)
    .waitFor();
  await expect.poll(() => answer(other, 'two_shims')).toBe('0.06 in');
  expect(await other.locator('.foreign code').textContent()).toMatch(/^[0-9a-f]{16}$/);
  await other.goto(`${inject('appAddress')}#/${BEARING}`);
  await expect.poll(() => answer(other, 'gap')).toBe('0.078 in');
  await other.getByRole('button', { name: /^Undo.*75-mine/ }).click();
  await expect.poll(() => other.locator('.route').textContent()).not.toContain('A sheet of mine');
  await other.goto(link.slice(0, -9));
  await other
    .getByRole('alert')
    .getByText(/was cut off on its way.*for the sheet as a file/)
    .waitFor();
  expect(errors).toEqual([]);
});
