import { type Browser, chromium } from 'playwright';
import { findChromium } from './chromium.ts';

/** A browser for tests that drive whole pages, and for taking pictures. The caller closes it. */
export async function openBrowser(): Promise<Browser> {
  return chromium.launch({ ...(await findChromium()), headless: true });
}
