import { expect, test, vi } from 'vitest';
import { createPaperChoices, jobSheets } from '../../src/page/paper-choices.ts';
import { createSheetView } from '../../src/page/sheet-view.ts';
import type { Sheet } from '../../src/sheet/sheet.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const FIRST = '# Bolts\n\n```given\nwidth = 3 in "Width" how "Caliper."\n```\n';
const SECOND = '# Nuts\n\n```given\nacross = 1 in "Across"\n```\n';

function open(...sources: readonly string[]) {
  const { desk, sheet, show } = createTestDesk(...sources);
  const print = vi.fn();
  const element = show(createPaperChoices(desk, sheet, { render: createSheetView, print }));
  const fields = [...element.querySelectorAll('select')];
  const button = element.querySelector('button')!;
  return { element, fields, button, print };
}

function choose(field: HTMLSelectElement | undefined, value: string): void {
  field!.value = value;
  field!.dispatchEvent(new Event('change'));
}

/** Presses the button, and gives what stood on the paper when it was printed. */
async function printed({ button, print }: ReturnType<typeof open>): Promise<string> {
  let text = '';
  print.mockImplementation(() => {
    text = textOf(document.querySelector('.paper'));
  });
  button.click();
  expect(button.disabled).toBe(true);
  await vi.waitFor(() => expect(button.disabled).toBe(false), 20_000);
  dispatchEvent(new Event('afterprint'));
  return text;
}

test('this sheet is what is printed unless something else is asked for', async () => {
  const text = await printed(open(FIRST, SECOND));
  expect(text).toContain('Bolts');
  expect(text).not.toContain('Nuts');
});

test('the whole job is every sheet', async () => {
  const paper = open(FIRST, SECOND);
  choose(paper.fields[0], 'job');
  const text = await printed(paper);
  expect(text).toContain('Bolts');
  expect(text).toContain('Nuts');
});

test('a measuring sheet has no narrative nor working to leave out', async () => {
  const paper = open(FIRST, SECOND);
  choose(paper.fields[0], 'measure-job');
  expect(paper.fields.map((field) => field.parentElement!.hidden)).toEqual([
    false,
    false,
    true,
    true,
  ]);
  expect(await printed(paper)).toContain('Measuring sheet');
});

test('a measuring sheet is offered only where there is something to measure', () => {
  const offers = (...sources: readonly string[]) =>
    [...open(...sources).fields[0]!.options].map(({ value }) => value);
  expect(offers(FIRST)).toEqual(['sheet', 'job', 'measure-sheet', 'measure-job']);
  expect(offers(SECOND, FIRST)).toEqual(['sheet', 'job', 'measure-job']);
  expect(offers(SECOND)).toEqual(['sheet', 'job']);
});

test('the guide belongs to no job, a sheet without a number does', () => {
  const sheets = [{ number: 0 }, { number: 20 }, { number: undefined }] as Sheet[];
  expect(jobSheets(sheets)).toEqual(sheets.slice(1));
});
