import { deviation, mean } from 'd3-array';
import { describe, expect, test } from 'vitest';
import { sampleBearing } from '../../bench/by-hand/bearing-samples.ts';
import { GEARING_READINGS, solveGearing } from '../../bench/by-hand/gearing.ts';
import { BEARING_READINGS, solveBearing } from '../../bench/by-hand/release-bearing.ts';
import { createBearingPeer, createGearingPeer, type Peer, toSi } from '../../bench/mathjs-peer.ts';
import { listResults } from '../../src/cli/record-results.ts';
import { outcomeOf } from '../../src/sheet/solve.ts';
import { runSimulation } from '../../src/sheet/spread/simulate.ts';
import { listDoubts } from '../../src/sheet/spread/uncertain-inputs.ts';
import { openNotebooks, work } from '../support/notebooks.ts';

const BOOK = openNotebooks();

/** What Layshaft makes of a sheet as it stands, in SI, by name. */
function solveSheet(sheet: string): Record<string, unknown> {
  const { book, frame } = work(BOOK, sheet);
  const cells = listResults(book, sheet).map((cell) => {
    const outcome = outcomeOf(book, frame, cell.index);
    const value = outcome.state === 'value' ? outcome.value : outcome.state;
    return [cell.name, value instanceof Float64Array ? [...value] : value] as const;
  });
  return Object.fromEntries(cells);
}

function closeTo(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(closeTo);
  if (typeof value !== 'number') return value;
  // closeTo counts digits after the point; lengths in metres need more of them than speeds.
  return expect.toSatisfy((x: number) => Math.abs(x - value) <= 1e-12 * Math.abs(value) + 1e-15);
}

function closeToAll(results: Record<string, unknown>): Record<string, unknown> {
  return Object.fromEntries(Object.entries(results).map(([name, value]) => [name, closeTo(value)]));
}

describe('the bench times work that comes to the same', () => {
  test('gearing by hand and by Layshaft', () => {
    const byHand: Record<string, unknown> = solveGearing(GEARING_READINGS);
    expect(solveSheet('20-gearing')).toMatchObject(closeToAll(byHand));
  });

  test('release bearing by hand and by Layshaft', () => {
    const byHand = solveBearing(BEARING_READINGS);
    const sorted = { ...byHand, shims: [...byHand.shims].sort((a, b) => b - a) };
    expect(solveSheet('70-release-bearing')).toMatchObject(closeToAll(sorted));
  });

  test.each([
    ['20-gearing', createGearingPeer()],
    ['70-release-bearing', createBearingPeer()],
  ] satisfies [string, Peer][])('%s by mathjs and by Layshaft', (sheet, peer) => {
    const scope = peer.solve();
    const theirs = Object.fromEntries(
      peer.formulas.map((name) => [name, toSi(scope.get(name))] as const),
    );
    expect(solveSheet(sheet)).toMatchObject(closeToAll(theirs));
  });
});

test('samples of the release bearing, drawn by hand and by Layshaft', () => {
  const { book, frame } = work(BOOK, '70-release-bearing');
  const { index } = book.find('70-release-bearing', 'gap_when_worn')!;
  const doubts = listDoubts(book, frame, index);
  const named = doubts.map(({ cell, plus }) => [book.cells[cell]!.name, plus]);
  const options = { samples: 20_480, seed: 1 };
  const byHand = sampleBearing(BEARING_READINGS, Object.fromEntries(named), options);
  const ours = runSimulation(book, frame, index, options);
  // They draw in another order, so they agree as distributions: to a twentieth of their width.
  const width = deviation(ours)!;
  expect(Math.abs(mean(ours)! - mean(byHand)!)).toBeLessThan(width / 20);
  expect(deviation(byHand)! / width).toBeCloseTo(1, 1);
});
