import type { Sheet } from '../sheet/sheet.ts';
import type { Desk } from './desk.ts';
import { h } from './element.ts';
import { loadAllDrawings } from './load-drawings.ts';
import { loadAllViews } from './load-views.ts';
import { createMeasuringSheet } from './paper-measuring.ts';
import { withoutNarrative } from './paper-parts.ts';
import { type PaperFormat, pageName, paperRules } from './paper-rules.ts';
import { createPaperSection, type RenderSheet } from './paper-section.ts';
import { formatNumber } from './route.ts';

/** What goes on paper, and how. */
export interface PaperOrder {
  readonly sheets: readonly Sheet[];
  readonly what: 'sheets' | 'measuring';
  readonly format: PaperFormat;
  readonly narrative: boolean;
  readonly working: boolean;
}

export interface PaperHost {
  readonly render: RenderSheet;
  /** Opens the browser's own dialogue for printing. */
  print(): void;
}

const ON_PAPER = 'on-paper';
const NOT_LOADED = 'What prints could not be loaded. Go back, and load the page again.';

/**
 * Puts a print in place of the page, prints it when all is drawn, and brings the page back when the browser has
 * done with it.
 */
export async function printOnPaper(desk: Desk, order: PaperOrder, host: PaperHost): Promise<void> {
  const told = h('span', { role: 'status' }, 'Drawing …');
  const rules = new CSSStyleSheet();
  const scrolled = window.scrollY;
  const before = document.activeElement;
  const print = createButton('Print', host.print);
  const back = createButton('Back to the page', close);
  const bar = h('div', { class: 'paper-bar' }, told, print, back);
  const paper = h('div', { class: `paper ${order.format}` }, bar);
  paper.classList.toggle('no-working', !order.working);
  let isOpen = true;

  function open(): void {
    document.documentElement.classList.add(ON_PAPER);
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, rules];
    document.body.append(paper);
    back.focus({ preventScroll: true });
    addEventListener('keydown', onKey);
    addEventListener('afterprint', close);
    addEventListener('hashchange', close);
  }

  function onKey({ key }: KeyboardEvent): void {
    if (key === 'Escape') close();
  }

  function close(): void {
    if (!isOpen) return;
    isOpen = false;
    removeEventListener('keydown', onKey);
    removeEventListener('afterprint', close);
    removeEventListener('hashchange', close);
    paper.remove();
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== rules);
    document.documentElement.classList.remove(ON_PAPER);
    window.scrollTo({ top: scrolled, behavior: 'instant' });
    if (before instanceof HTMLElement) before.focus({ preventScroll: true });
  }

  async function lay(): Promise<void> {
    const [{ placePaperCode }] = await Promise.all([
      import('./paper-code.ts'),
      loadAllDrawings(),
      loadAllViews(),
    ]);
    const laid: HTMLElement[] = [];
    let missing = 0;
    for (const [i, sheet] of order.sheets.entries()) {
      if (!isOpen) return;
      told.textContent = `Drawing sheet ${i + 1} of ${order.sheets.length}: ${sheet.title} …`;
      const shown = order.narrative ? sheet : withoutNarrative(sheet);
      const section = createPaperSection(desk, shown, host.render, `paper-${i}-`);
      section.element.classList.add(pageName(i));
      paper.append(section.element);
      laid.push(section.element);
      missing += await section.settled();
    }
    placePaperCode(desk.job(), laid[0]!, laid.at(-1)!);
    if (missing > 0) told.textContent = `Ready, but without ${missing} of its drawings.`;
    else told.textContent = 'Ready to print.';
  }

  function layBlank(): void {
    const sheet = createMeasuringSheet(desk, order.sheets);
    sheet.classList.add(pageName(0));
    paper.append(sheet);
    told.textContent = 'Ready to print.';
  }

  const isBlank = order.what === 'measuring';
  rules.replaceSync(
    paperRules(order.format, isBlank ? ['Measuring sheet'] : order.sheets.map(nameSheet)),
  );
  open();
  try {
    await document.fonts.ready;
    if (isBlank) layBlank();
    else await lay();
  } catch {
    told.textContent = NOT_LOADED;
    return;
  }
  if (isOpen) host.print();
}

function nameSheet({ number, title }: Sheet): string {
  return `${formatNumber(number)} ${title}`.trim();
}

function createButton(words: string, act: () => void): HTMLElement {
  return h('button', { type: 'button', on: { click: act } }, words);
}
