import { expect, vi } from 'vitest';
import { makeBrowser } from './made-session.ts';

/** A window with the page of jobs open in it. */
export async function openJobsPage() {
  const browser = makeBrowser();
  const opened = await browser.openWindow();
  opened.session.open('#/jobs');
  const { root } = opened;
  await vi.waitFor(() => expect(root.querySelector('h1')?.textContent).toBe('Jobs'));
  const button = (name: string | RegExp) => {
    const all = [...root.querySelectorAll('main button')];
    const found = all.find(({ textContent }) =>
      typeof name === 'string' ? textContent === name : name.test(textContent ?? ''),
    );
    if (found === undefined) throw new Error(`no button ${name}`);
    return found as HTMLElement;
  };
  return { ...browser, ...opened, button };
}
