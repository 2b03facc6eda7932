import { describe, expect, test } from 'vitest';
import { describeSamples } from '../../src/sheet/spread/distribution.ts';
import { runSimulation } from '../../src/sheet/spread/simulate.ts';
import { spreadOf } from '../../src/sheet/spread/spread.ts';
import { studentT } from '../../src/sheet/spread/student-t.ts';
import type { Doubt } from '../../src/sheet/spread/uncertain-inputs.ts';
import { cellIndex, openText, type Worked, work } from '../support/notebooks.ts';
import { readPublished, type Sourced } from '../support/published.ts';

interface Input {
  readonly name: string;
  readonly value: number;
  /** Standard uncertainty of a normal or Student distribution. */
  readonly u?: number;
  /** Half the width of a rectangular one. */
  readonly half?: number;
  readonly dof?: number;
}

interface UncertaintyCheck extends Sourced {
  readonly work: string;
  readonly inputs: readonly Input[];
  readonly linear: {
    readonly value: number;
    readonly valueWithin: number;
    readonly u: number;
    readonly uWithin: number;
    readonly dof?: number;
    readonly dofWithin?: number;
    readonly confidence?: number;
    readonly expanded?: number;
    readonly expandedWithin?: number;
    readonly worst?: number;
    readonly worstWithin?: number;
    readonly bends?: boolean;
  };
  readonly simulated?: {
    readonly mean?: number;
    readonly meanWithin?: number;
    readonly u: number;
    readonly uWithin: number;
    /** Half the symmetric range of 95 %. */
    readonly half?: number;
    readonly halfWithin?: number;
    readonly shortest?: readonly [number, number];
    readonly shortestWithin?: number;
  };
}

const { checks } = readPublished<{ checks: readonly UncertaintyCheck[] }>('uncertainty.json');
const SAMPLES = 400_000;

describe.each(checks.map((check) => [check.id, check.what, check] as const))(
  '%s: %s',
  (_id, _what, check) => {
    const worked = work(openText(sheetOf(check)), 'made');
    const result = cellIndex(worked.book, 'made', check.work.split(' ')[0]!);
    const doubts = check.inputs.map((input) => doubtOf(worked, input));

    test('by the law of propagation', () => {
      const [spread] = spreadOf(worked.book, worked.frame, result, doubts);
      const { linear } = check;
      expectNear(spread!.value, linear.value, linear.valueWithin);
      expectNear(spread!.likely.u, linear.u, linear.uWithin);
      expect(spread!.straight).toBe(linear.bends !== true);
      if (linear.dof !== undefined) expectNear(spread!.likely.dof, linear.dof, linear.dofWithin!);
      if (linear.expanded !== undefined) {
        const reach =
          studentT(linear.confidence!, Math.floor(spread!.likely.dof)) * spread!.likely.u;
        expectNear(reach, linear.expanded, linear.expandedWithin!);
      }
      if (linear.worst !== undefined) {
        expectNear((spread!.worst.to - spread!.worst.from) / 2, linear.worst, linear.worstWithin!);
      }
    });

    if (check.simulated === undefined) return;
    test('by simulation', () => {
      const samples = runSimulation(worked.book, worked.frame, result, {
        samples: SAMPLES,
        seed: 0.5,
        doubts,
      });
      const found = describeSamples(samples);
      const { simulated } = check;
      expectNear(found.u, simulated!.u, simulated!.uWithin);
      if (simulated!.mean !== undefined)
        expectNear(found.mean, simulated!.mean, simulated!.meanWithin!);
      if (simulated!.half !== undefined) {
        expectNear(
          (found.symmetric[1] - found.symmetric[0]) / 2,
          simulated!.half,
          simulated!.halfWithin!,
        );
      }
      simulated!.shortest?.forEach((end, i) => {
        expectNear(found.shortest[i]!, end, simulated!.shortestWithin!);
      });
    });
  },
);

function sheetOf({ inputs, work: formula }: UncertaintyCheck): string {
  const given = inputs.map(({ name, value }) => `${name} = ${value}`);
  return ['```given', ...given, '```', '', '```work', formula, '```', ''].join('\n');
}

function doubtOf(
  { book }: Worked,
  { name, u, half = 0, dof = Number.POSITIVE_INFINITY }: Input,
): Doubt {
  const cell = cellIndex(book, 'made', name);
  const base = { cell, shift: 0, dof, minus: half, plus: half };
  return u === undefined
    ? { ...base, shape: 'rectangular', u: half / Math.sqrt(3) }
    : { ...base, shape: 'student', u };
}

function expectNear(found: number, wanted: number, within: number): void {
  expect(Math.abs(found - wanted), `${found} against ${wanted}`).toBeLessThanOrEqual(within);
}
