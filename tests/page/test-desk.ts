import { createHistory } from '../../src/job/history.ts';
import { NEW_JOB } from '../../src/job/record.ts';
import { createLiveDesk, type LiveDesk } from '../../src/page/live-desk.ts';
import type { View } from '../../src/page/view.ts';
import { linkBook } from '../../src/sheet/book.ts';
import type { GivenCell } from '../../src/sheet/cell.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import type { Block, Sheet } from '../../src/sheet/sheet.ts';

export interface TestDesk {
  readonly desk: LiveDesk;
  readonly sheet: Sheet;
  /** The first block of a kind. */
  block<K extends Block['kind']>(kind: K): Extract<Block, { kind: K }>;
  given(name: string): GivenCell;
  /** Puts a view on the page and keeps it fresh, as the app does. */
  show(view: View): HTMLElement;
}

/** A real desk on sheets written in the test; the first is the one that is open. */
export function createTestDesk(...sources: readonly string[]): TestDesk {
  const sheets = sources.map((source, i) =>
    readSheet(source, `notebooks/${(i + 1) * 10}-sheet.md`),
  );
  const views: View[] = [];
  const desk = createLiveDesk({
    book: linkBook(sheets),
    history: createHistory(NEW_JOB),
    today: () => '2026-03-14',
    onWorked(cells) {
      for (const view of views) if (view.cells.some((cell) => cells.has(cell))) view.refresh();
    },
    onJob() {
      for (const view of views) view.refresh();
    },
  });
  const sheet = sheets[0]!;
  return {
    desk,
    sheet,
    block(kind) {
      return sheet.parts.find((part) => part.kind === kind) as never;
    },
    given: (name) => desk.book.find(sheet.name, name) as GivenCell,
    show(view) {
      views.push(view);
      document.body.replaceChildren(view.element);
      return view.element;
    },
  };
}

/** The text of an element with plain blanks. */
export function textOf(element: Element | null | undefined): string {
  return (element?.textContent ?? '').replaceAll(/[\u00a0\u202f]/g, ' ');
}
