import { describe, expect, test } from 'vitest';
import { LOADED_BOLT_TENSION, NUT_FACTOR } from '../../src/trade/bolt-tension.ts';
import { refusalOf, runFunction } from '../support/run-function.ts';

const factor = (...values: number[]) => runFunction(NUT_FACTOR, ...values) as number;
const loaded = (...values: number[]) => runFunction(LOADED_BOLT_TENSION, ...values) as number;

describe('the factor of torque', () => {
  test('without friction is the slope of the thread alone', () => {
    expect(factor(0.01, 0.0015, 0, 0)).toBeCloseTo(0.0015 / (2 * Math.PI * 0.01), 12);
  });

  test('is near 0.2 at a friction of 0.15', () => {
    expect(factor(0.01, 0.0015, 0.15, 0.15)).toBeCloseTo(0.2, 1);
  });

  test('takes the pitch diameter of a metric thread as the standard has it', () => {
    const [d, p] = [0.01, 0.0015];
    const pitchDiameter = 0.009026;
    const slope = p / (Math.PI * pitchDiameter);
    const wanted = (pitchDiameter / (2 * d)) * slope;
    expect(factor(d, p, 0, 0)).toBeCloseTo(wanted, 6);
  });

  test('has no value for a thread as deep as its bolt', () => {
    expect(refusalOf(NUT_FACTOR, 0.01, 0.02, 0.1, 0.1)).toContain('not deeper');
    expect(refusalOf(NUT_FACTOR, 0, 0, 0.1, 0.1)).toContain('above 0');
    expect(refusalOf(NUT_FACTOR, 0.01, -0.001, 0.1, 0.1)).toContain('0 or more');
  });
});

describe('a load on a tightened joint', () => {
  test('is shared by stiffness', () => {
    expect(loaded(10_000, 4000, 1, 3)).toBe(11_000);
    expect(loaded(10_000, 4000, 2e8, 2e8)).toBe(12_000);
  });

  test('that opens it is told', () => {
    expect(LOADED_BOLT_TENSION.outside!(10_000, 13_000, 1, 3)).toBeUndefined();
    expect(LOADED_BOLT_TENSION.outside!(10_000, 14_000, 1, 3)).toContain('opens');
    expect(LOADED_BOLT_TENSION.outside!(Float64Array.of(1), 14_000, 1, 3)).toBeUndefined();
  });

  test('needs something that is stiff', () => {
    expect(refusalOf(LOADED_BOLT_TENSION, 1, 1, 0, 1)).toContain('above 0');
    expect(refusalOf(LOADED_BOLT_TENSION, 1, 1, 1, 0)).toContain('above 0');
  });
});
