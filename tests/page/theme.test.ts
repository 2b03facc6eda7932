import { expect, test } from 'vitest';
import { h } from '../../src/page/element.ts';
import { createThemeSwitch, THEME_KEY, type ThemeHost } from '../../src/page/theme.ts';

function createHost(
  dark: boolean,
  kept?: string,
): ThemeHost & { readonly all: Map<string, string> } {
  const all = new Map<string, string>(kept === undefined ? [] : [[THEME_KEY, kept]]);
  return {
    all,
    root: h('html'),
    prefersDark: () => dark,
    shelf: {
      getItem: (key) => all.get(key) ?? null,
      setItem: (key, value) => void all.set(key, value),
      removeItem: (key) => void all.delete(key),
    },
  };
}

test('without a choice the page follows the device', () => {
  const host = createHost(true);
  expect(createThemeSwitch(host).getAttribute('aria-label')).toBe('Light page');
  expect(host.root.dataset.theme).toBeUndefined();
});

test('a choice is kept', () => {
  const host = createHost(false);
  createThemeSwitch(host).click();
  expect(host.root.dataset.theme).toBe('dark');
  expect(host.all.get(THEME_KEY)).toBe('dark');
  expect(createHost(false, 'dark').root.dataset.theme).toBeUndefined();
});

test('turned back to what the device has, the page follows the device again', () => {
  const host = createHost(false, 'dark');
  createThemeSwitch(host).click();
  expect(host.root.dataset.theme).toBeUndefined();
  expect(host.all.size).toBe(0);
});

test('a kept word that is no theme is no choice', () => {
  const host = createHost(false, 'plaid');
  createThemeSwitch(host);
  expect(host.root.dataset.theme).toBeUndefined();
});

test('a browser that keeps nothing still turns the page', () => {
  const refuse = (): never => {
    throw new DOMException('denied', 'SecurityError');
  };
  const shelf = { getItem: refuse, setItem: refuse, removeItem: refuse };
  const host: ThemeHost = { root: h('html'), shelf, prefersDark: () => false };
  createThemeSwitch(host).click();
  expect(host.root.dataset.theme).toBe('dark');
});
