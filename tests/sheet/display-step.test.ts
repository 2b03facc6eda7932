import { expect, test } from 'vitest';
import { displayStep } from '../../src/sheet/display-step.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';

const inch = parseUnit('in')!;

test.each([
  ['nothing said', {}, undefined],
  ['a unit alone', { unit: inch }, undefined],
  ['a plain number', { resolution: 0.05 }, 0.05],
  ['thousandths of an inch', { unit: inch, resolution: 0.001 }, 0.0000254],
  ['sixty-fourths of an inch', { unit: inch, fraction: 64 }, 0.0254 / 64],
  ['a plain fraction', { fraction: 4 }, 0.25],
])('%s: %o', (_, display, step) => {
  expect(displayStep(display)).toBe(step);
});
