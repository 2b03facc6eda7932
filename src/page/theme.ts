import { h } from './element.ts';

type Theme = 'light' | 'dark';

export const THEME_KEY = 'layshaft/theme';

/** What the switch needs from the browser. */
export interface ThemeHost {
  readonly root: HTMLElement;
  readonly shelf: Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;
  /** True while the device asks for dark. */
  readonly prefersDark: () => boolean;
}

/** A button between day and night. Chosen as the device has it, the page follows the device again. */
export function createThemeSwitch(host: ThemeHost): HTMLElement {
  const button = h('button', { type: 'button', class: 'tool', on: { click: turn } });
  apply(recall(host));

  function turn(): void {
    const next: Theme = current(host) === 'dark' ? 'light' : 'dark';
    const chosen = next === deviceTheme(host) ? undefined : next;
    apply(chosen);
    remember(host, chosen);
  }

  function apply(chosen: Theme | undefined): void {
    if (chosen === undefined) delete host.root.dataset.theme;
    else host.root.dataset.theme = chosen;
    const other = current(host) === 'dark' ? 'Light page' : 'Dark page';
    button.replaceChildren(
      h('span', { class: 'theme-mark', 'aria-hidden': 'true' }),
      h('span', { class: 'wide-only' }, other),
    );
    button.setAttribute('aria-label', other);
  }

  return button;
}

function current(host: ThemeHost): Theme {
  return (host.root.dataset.theme as Theme | undefined) ?? deviceTheme(host);
}

function deviceTheme(host: ThemeHost): Theme {
  return host.prefersDark() ? 'dark' : 'light';
}

/** A browser that keeps nothing follows the device. */
function recall(host: ThemeHost): Theme | undefined {
  try {
    const kept = host.shelf.getItem(THEME_KEY);
    return kept === 'light' || kept === 'dark' ? kept : undefined;
  } catch {
    return undefined;
  }
}

function remember(host: ThemeHost, chosen: Theme | undefined): void {
  try {
    if (chosen === undefined) host.shelf.removeItem(THEME_KEY);
    else host.shelf.setItem(THEME_KEY, chosen);
  } catch {
    // The choice then lasts as long as the page is open.
  }
}
