import { describe, expect, test } from 'vitest';
import { findPlan, PLANS } from '../../src/drawing/drawing-plans.ts';

describe.each(Object.entries(PLANS))('the plan of %s', (name, plan) => {
  test('goes by the name that sheets use', () => {
    expect(plan.name).toBe(name);
    expect(findPlan(name)).toBe(plan);
  });

  test('names each slot once, and says what it is', () => {
    const names = plan.slots.map((slot) => slot.name);
    expect(new Set(names).size).toBe(names.length);
    expect(plan.slots.filter(({ doc }) => doc.length < 5)).toEqual([]);
  });

  test('asks for something that must be there, or for nothing', () => {
    const wanted = plan.slots.filter(({ optional }) => optional !== true);
    expect(wanted.length).toBeGreaterThan(0);
  });
});

test('a drawing that nobody knows has no plan', () => {
  expect(findPlan('teapot')).toBeUndefined();
  expect(findPlan('constructor')).toBeUndefined();
});
