import { listBlockKeys } from '../job/block-key.ts';
import type { Block, Part, Sheet } from '../sheet/sheet.ts';
import { createCaution } from './caution.ts';
import { createChecks } from './check.ts';
import { createCompare } from './compare.ts';
import type { Desk } from './desk.ts';
import { h } from './element.ts';
import { createFrom } from './from.ts';
import { createGivens } from './given.ts';
import { createGlance } from './glance.ts';
import { createLater } from './later.ts';
import { loadBlocks, loadFigures, loadFinds, loadPractice } from './load-views.ts';
import { createNarrative, type NarrativeState } from './narrative.ts';
import { createNote } from './note.ts';
import { createPaper } from './paper.ts';
import { createPracticeFoot } from './practice-foot.ts';
import { createProblemList } from './problem-list.ts';
import { createPublish } from './publish.ts';
import { formatNumber } from './route.ts';
import { createStack } from './stack.ts';
import type { View } from './view.ts';
import { createWork } from './work.ts';

/** A sheet on the page: its narrative with the live blocks in it. */
export interface SheetView {
  readonly sheet: Sheet;
  readonly nodes: readonly Node[];
  readonly title: HTMLElement;
  /** Mutates what shows these cells. */
  refresh(cells: ReadonlySet<number>): void;
  /** Mutates all: units or ticks are others now. */
  refreshAll(): void;
  dispose(): void;
}

export function createSheetView(desk: Desk, sheet: Sheet): SheetView {
  const state: NarrativeState = { level: 1, titled: false };
  const views: View[] = [];
  const title = createTitle(sheet);
  const problems = desk.book.problems.filter((problem) => problem.place?.file === sheet.file);
  const keys = listBlockKeys(sheet);
  const nodes = sheet.parts.flatMap((part) => [
    ...createPart(desk, sheet, part, state, views),
    ...createNotes(desk, sheet, keys.get(part), views),
  ]);
  const list = createProblemList(problems);
  const glance = createGlance(desk, sheet);
  if (glance !== undefined) views.push(glance);
  const foot = [createPracticeFoot(desk, sheet), createCompare(desk, sheet)].filter(
    (view) => view !== undefined,
  );
  views.push(...foot);
  const publish = createPublish(desk, sheet);
  if (publish !== undefined) views.push(publish);
  const paper = createPaper(desk, sheet, createSheetView);
  return {
    sheet,
    title,
    nodes: [
      title,
      ...[list, glance?.element].filter((node) => node !== undefined),
      ...nodes,
      ...foot.map(({ element }) => element),
      ...[publish?.element, paper?.element].filter((node) => node !== undefined),
    ],
    refresh(cells) {
      for (const view of views) if (view.cells.some((cell) => cells.has(cell))) view.refresh();
    },
    refreshAll() {
      for (const view of views) view.refresh();
    },
    dispose() {
      for (const view of views) view.dispose?.();
    },
  };
}

function createTitle({ number, title }: Sheet): HTMLElement {
  const place = formatNumber(number);
  const lead = place !== '' && h('span', { class: 'place-in-job' }, place);
  return h('h1', { tabindex: -1 }, lead, lead && ' ', h('span', {}, title));
}

/** Mutates the state and the views. */
function createPart(
  desk: Desk,
  sheet: Sheet,
  part: Part,
  state: NarrativeState,
  views: View[],
): readonly Node[] {
  if (part.kind === 'narrative') return createNarrative(part.tokens, state);
  if (part.kind === 'caution') return [createCaution(part)];
  const view = createBlock(desk, sheet, part);
  views.push(view);
  return [view.element];
}

/** A note for a block, under it; none for narrative. Mutates the views. */
function createNotes(
  desk: Desk,
  sheet: Sheet,
  key: string | undefined,
  views: View[],
): readonly Node[] {
  if (key === undefined) return [];
  const note = createNote(key, {
    note: () => desk.noteOn(sheet.name, key),
    setNote: (text) => desk.setNote(sheet.name, key, text),
  });
  views.push(note);
  return [note.element];
}

function createBlock(desk: Desk, sheet: Sheet, block: Exclude<Block, { kind: 'caution' }>): View {
  switch (block.kind) {
    case 'given':
      return createGivens(desk, sheet, block);
    case 'find':
      return createLater(loadFinds, (createFinds) => createFinds(desk, sheet, block));
    case 'practice':
      return createLater(loadPractice, (createPractice) => createPractice(desk, sheet, block));
    case 'from':
      return createFrom(desk, sheet, block);
    case 'work':
      return createWork(desk, sheet, block);
    case 'stack':
      return createStack(desk, sheet, block);
    case 'check':
      return createChecks(desk, block);
    case 'chart':
      return createLater(loadBlocks, ({ createChart }) => createChart(desk, sheet, block));
    case 'drawing':
      return createLater(loadBlocks, ({ createDrawing }) => createDrawing(desk, sheet, block));
    case 'figures':
      return createLater(loadFigures, (createFigures) => createFigures(desk, block));
    case 'table':
      return createLater(loadBlocks, (blocks) => blocks.createReferenceTable(desk, sheet, block));
    case 'steps':
      return createLater(loadBlocks, ({ createSteps }) =>
        createSteps(block, {
          dayOf: (step) => desk.dayOf(sheet.name, step),
          tick: (step, done) => desk.tick(sheet.name, step, done),
          signerOf: (step) => desk.signerOf(sheet.name, step),
          worker: desk.worker,
          setWorker: desk.setWorker,
        }),
      );
    default:
      return block satisfies never;
  }
}
