/**
 * Takes a picture of a page, to look at while building it:
 *
 *     npx tsx tests/support/picture.ts URL OUT.png [--width 390] [--height 844] [--dark] [--full]
 *     npx tsx tests/support/picture.ts URL OUT.png --touch --script "scrollTo(0, 900)"
 *     npx tsx tests/support/picture.ts URL OUT.pdf --pdf
 *
 * Prints what the page wrote to its console, and whatever it asked other origins for.
 */
import { parseArgs } from 'node:util';
import type { BrowserContextOptions, Page } from 'playwright';
import { openBrowser } from './open-browser.ts';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    width: { type: 'string', default: '1024' },
    height: { type: 'string', default: '768' },
    /** Pixels of the picture for each pixel of the page. */
    scale: { type: 'string', default: '1' },
    dark: { type: 'boolean', default: false },
    full: { type: 'boolean', default: false },
    touch: { type: 'boolean', default: false },
    /** Print styles on screen, as a picture. */
    print: { type: 'boolean', default: false },
    pdf: { type: 'boolean', default: false },
    /** JavaScript to run in the page before the picture. */
    script: { type: 'string' },
    /** Only the first element that matches this selector. */
    only: { type: 'string' },
    /** Milliseconds to wait for the page to settle. */
    wait: { type: 'string', default: '400' },
  },
});

function describeContext(): BrowserContextOptions {
  return {
    viewport: { width: Number(values.width), height: Number(values.height) },
    deviceScaleFactor: Number(values.scale),
    colorScheme: values.dark ? 'dark' : 'light',
    hasTouch: values.touch,
    locale: 'en-GB',
    timezoneId: 'UTC',
  };
}

function listen(page: Page, origin: string): void {
  page.on('console', (message) => console.log(`${message.type()}: ${message.text()}`));
  page.on('pageerror', (error) => console.log(`error: ${error.message}`));
  page.on('request', (request) => {
    const url = request.url();
    if (/^https?:/.test(url) && !url.startsWith(origin)) console.log(`request elsewhere: ${url}`);
  });
}

async function save(page: Page, file: string): Promise<void> {
  if (values.pdf) {
    await page.pdf({ path: file, preferCSSPageSize: true, printBackground: true });
  } else if (values.only) {
    await page.locator(values.only).first().screenshot({ path: file });
  } else {
    await page.screenshot({ path: file, fullPage: values.full });
  }
}

async function takePicture(url: string, file: string): Promise<void> {
  const browser = await openBrowser();
  try {
    const page = await browser.newPage(describeContext());
    listen(page, new URL(url).origin);
    await page.goto(url, { waitUntil: 'load' });
    if (values.print) await page.emulateMedia({ media: 'print' });
    await page.waitForTimeout(Number(values.wait));
    if (values.script) await page.evaluate(values.script);
    if (values.script) await page.waitForTimeout(Number(values.wait));
    await save(page, file);
  } finally {
    await browser.close();
  }
}

const [url, file] = positionals;
if (url === undefined || file === undefined) {
  console.error('say: npx tsx tests/support/picture.ts URL FILE [--width 390] [--dark] [--full]');
  process.exitCode = 2;
} else {
  await takePicture(url, file);
}
