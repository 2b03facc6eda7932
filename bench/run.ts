/**
 * `npm run bench`: Layshaft beside the same arithmetic written by hand, beside mathjs with units,
 * and beside itself on larger and larger sheets; all in one run, so that the ratios hold on any
 * machine.
 *
 * It runs with one thread that collects garbage. Two of them race over where each object comes to lie, and
 * whether 10,000 cells lie in order or scattered doubles or halves their time by luck: a ratio taken on them
 * would be of the throw and not of the work. The samples come first: the page draws them in a worker, where
 * nothing else has run either that the machine could have fitted the code to.
 */

import { GEARING_READINGS, solveGearing } from './by-hand/gearing.ts';
import { BEARING_READINGS, solveBearing } from './by-hand/release-bearing.ts';
import { generateSheet, lastReading } from './generated-sheet.ts';
import { benchGrowth, type Growing } from './growing.ts';
import { benchJob } from './job.ts';
import { createBearingPeer, createGearingPeer, type Peer } from './mathjs-peer.ts';
import { measure } from './measure.ts';
import { type OpenedSheet, openBook, openNotebook, openSheet } from './opened-sheet.ts';
import { benchSamples, benchSpread } from './sure.ts';
import { alone, atMost, fasterBy, formatTable, type Row } from './table.ts';

function benchSheet(
  name: string,
  sheet: OpenedSheet,
  byHand: () => object,
  peer: Peer,
): readonly Row[] {
  const results = Object.keys(byHand());
  const medians = measure(
    [
      { name: 'all', work: sheet.solve },
      { name: 'results', work: sheet.solveOnly(new Set(results)) },
      { name: 'by hand', work: byHand },
      { name: 'formulas', work: sheet.solveOnly(new Set(peer.formulas)) },
      { name: 'mathjs', work: peer.solve },
    ],
    { rounds: 150 },
  );
  const time = (contender: string) => medians.get(contender)!;
  const [ours, theirs] = [results.length, peer.formulas.length];
  return [
    alone(`${name}: solve, all ${sheet.book.cells.length} values`, time('all')),
    atMost(`${name}: ${ours} results, beside hand-written`, time('results'), time('by hand'), 2),
    fasterBy(`${name}: ${theirs} formulas, beside mathjs`, time('formulas'), time('mathjs'), 20),
  ];
}

/** Two sets of readings by turns: arithmetic on one that never changes could be done beforehand. */
function inTurns<T extends object>(
  solve: (readings: T) => object,
  readings: T,
  change: Partial<T>,
): () => object {
  const both = [{ ...readings }, { ...readings, ...change }] as const;
  let turn = 0;
  return () => {
    turn = 1 - turn;
    return solve(both[turn]!);
  };
}

const CELLS = { sizes: [100, 1_000, 10_000], of: 'cells' } as const;

const GROWING: readonly Growing[] = [
  { ...CELLS, what: 'opening', work: prepareOpening, bar: 1.1, rounds: 11, openings: 1 },
  {
    ...CELLS,
    what: 'full solve',
    work: (size) => openGenerated(size).solve,
    bar: 1.1,
    rounds: 30,
    openings: 5,
  },
  { ...CELLS, what: 'one change', work: prepareChange, bar: 0.2, rounds: 30, openings: 1 },
];

function prepareOpening(size: number): () => unknown {
  const text = generateSheet(size);
  return () => openBook(text, 'generated.md');
}

function prepareChange(size: number): () => unknown {
  return openGenerated(size).change(lastReading(size), ['3.2', '3.3']);
}

function openGenerated(size: number): OpenedSheet {
  return openSheet(generateSheet(size), 'generated.md');
}

const rows = [
  benchSamples(),
  ...benchSheet(
    'gearing',
    openNotebook('20-gearing'),
    inTurns(solveGearing, GEARING_READINGS, { cruise_speed: 30 }),
    createGearingPeer(),
  ),
  ...benchSheet(
    'release bearing',
    openNotebook('70-release-bearing'),
    inTurns(solveBearing, BEARING_READINGS, { disc_wear: 0.001 }),
    createBearingPeer(),
  ),
  await benchSpread(),
  ...(await benchJob()),
  ...GROWING.flatMap(benchGrowth),
];
console.log(formatTable(rows));
const missed = rows.filter(({ met }) => met === false).length;
console.log(missed === 0 ? '\nall bars met' : `\n${missed} bars missed`);
