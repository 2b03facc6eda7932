import { linkBook } from '../sheet/book.ts';
import { createFrame } from '../sheet/create-frame.ts';
import { enterGiven } from '../sheet/enter.ts';
import { readSheet } from '../sheet/read-sheet.ts';
import type { Entry } from '../sheet/reading.ts';
import { solve } from '../sheet/solve.ts';
import { type Distribution, describeSamples } from '../sheet/spread/distribution.ts';
import { simulate } from '../sheet/spread/simulate.ts';

/** What the page asks of the worker: plain data, since compiled sheets cannot be sent. */
export interface SimulationOrder {
  readonly sheets: readonly { readonly file: string; readonly source: string }[];
  readonly entries: readonly (readonly [cell: number, entry: Entry])[];
  readonly result: number;
  readonly samples: number;
  readonly seed: number;
  /** Which number of a list, from 0. */
  readonly element: number;
}

export type SimulationNews =
  | { readonly type: 'progress'; readonly share: number }
  | { readonly type: 'done'; readonly distribution: Distribution };

/** Blocks between two reports of progress. */
const REPORT_EVERY = 8;

self.addEventListener('message', ({ data }: MessageEvent<SimulationOrder>) => {
  const book = linkBook(data.sheets.map(({ source, file }) => readSheet(source, file)));
  const frame = createFrame(book);
  for (const [cell, entry] of data.entries) enterGiven(book, frame, cell, entry);
  solve(book, frame);
  const run = simulate(book, frame, data.result, data);
  for (let i = 1; ; i += 1) {
    const step = run.next();
    if (step.done) {
      tell({ type: 'done', distribution: describeSamples(step.value) });
      return;
    }
    if (i % REPORT_EVERY === 0) tell({ type: 'progress', share: step.value });
  }
});

function tell(news: SimulationNews): void {
  self.postMessage(news);
}
