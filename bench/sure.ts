import type { Book } from '../src/sheet/book.ts';
import { createFrame } from '../src/sheet/create-frame.ts';
import type { Frame } from '../src/sheet/frame.ts';
import { solve } from '../src/sheet/solve.ts';
import { runSimulation } from '../src/sheet/spread/simulate.ts';
import { spreadOf } from '../src/sheet/spread/spread.ts';
import { listDoubts } from '../src/sheet/spread/uncertain-inputs.ts';
import { type BearingDoubts, sampleBearing } from './by-hand/bearing-samples.ts';
import { BEARING_READINGS } from './by-hand/release-bearing.ts';
import { measureFrame } from './frame.ts';
import { openJob } from './job.ts';
import { measure } from './measure.ts';
import { openNotebook } from './opened-sheet.ts';
import { atMost, type Row } from './table.ts';

/** Whole blocks of the simulation that come to 100,000. */
const SAMPLES = 100_352;
const SEED = 1;

/** Drawing 100,000 samples of a sheet, beside the same loop written by hand. */
export function benchSamples(): Row {
  const { book, frame } = openNotebook('70-release-bearing');
  const { index } = book.find('70-release-bearing', 'gap_when_worn')!;
  const doubts = doubtsOf(book, frame, index);
  const medians = measure(
    [
      {
        name: 'ours',
        work: () => runSimulation(book, frame, index, { samples: SAMPLES, seed: SEED }),
      },
      {
        name: 'by hand',
        work: () => sampleBearing(BEARING_READINGS, doubts, { samples: SAMPLES, seed: SEED }),
      },
    ],
    { rounds: 150 },
  );
  const [ours, byHand] = [medians.get('ours')!, medians.get('by hand')!];
  return atMost('release bearing: 100,000 samples, beside hand-written', ours, byHand, 2);
}

/** Both loops doubt the same readings: one that the loop by hand does not know is a fault of the bench. */
function doubtsOf(book: Book, frame: Frame, result: number): BearingDoubts {
  const doubts = listDoubts(book, frame, result);
  const named = doubts.map(({ cell, plus }) => [book.cells[cell]!.name, plus] as const);
  const stranger = named.find(
    ([name]) => !['finger_reading', 'bearing_reading', 'straightedge'].includes(name),
  );
  if (stranger !== undefined) throw new Error(`the loop by hand does not doubt ${stranger[0]}`);
  return Object.fromEntries(named);
}

/** How sure every result of the largest sheet is, beside one empty frame of the page. */
export async function benchSpread(): Promise<Row> {
  const book = openJob();
  const frame = createFrame(book);
  solve(book, frame);
  const sheet = largestSheet(book);
  const results = resultsOf(book, sheet);
  const medians = measure(
    [{ name: 'ours', work: () => results.map((index) => spreadOf(book, frame, index)) }],
    { rounds: 30 },
  );
  const what = `${sheet}: spread of all ${results.length} results, beside one frame`;
  return atMost(what, medians.get('ours')!, await measureFrame(), 1);
}

function resultsOf(book: Book, sheet: string): readonly number[] {
  return book
    .cellsOf(sheet)
    .filter(({ role }) => role === 'work' || role === 'stack')
    .map(({ index }) => index);
}

function largestSheet(book: Book): string {
  const names = book.sheets.map(({ name }) => name);
  return names.reduce((most, name) =>
    resultsOf(book, name).length > resultsOf(book, most).length ? name : most,
  );
}
