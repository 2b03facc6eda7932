import { expect, test } from 'vitest';
import type { SimulationWatch } from '../../src/page/run-simulation.ts';
import { createSimulation } from '../../src/page/simulation.ts';
import { describeSamples } from '../../src/sheet/spread/distribution.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const SHEET = '# A\n```given\ngap = 3.00 ± 0.01 in "Gap"\n```\n';

function open() {
  const { desk, given } = createTestDesk(SHEET);
  const watches: SimulationWatch[] = [];
  const stub = {
    ...desk,
    simulate(_cell: number, _options: object, watch: SimulationWatch) {
      watches.push(watch);
      return watch.onStopped;
    },
  };
  const element = createSimulation(stub, given('gap'), {
    show: (value) => `${value.toFixed(1)} in`,
    name: () => 'gap',
  });
  document.body.replaceChildren(element);
  const press = (name: RegExp) =>
    [...element.querySelectorAll('button')].find((one) => name.test(one.textContent!))!.click();
  return {
    element,
    press,
    watch: () => watches.at(-1)!,
    told: () => textOf(element.querySelector('p')),
  };
}

test('while it runs there is progress, and a way to stop it', () => {
  const { element, press, watch, told } = open();
  press(/^Simulate/);
  const progress = element.querySelector('progress')!;
  expect(progress.hidden).toBe(false);
  watch().onProgress(0.4);
  expect(progress.value).toBeCloseTo(0.4);
  press(/^Stop$/);
  expect(progress.hidden).toBe(true);
  expect(told()).toBe('Stopped.');
});

test('done, it tells the range with its seed and shows the picture', async () => {
  const { element, press, watch, told } = open();
  press(/^Simulate/);
  watch().onDone(describeSamples(Float64Array.from({ length: 1000 }, (_, i) => i / 1000)));
  expect(told()).toMatch(/^95 % of 1000 draws lie between .* seed 1\.$/);
  await expect.poll(() => element.querySelector('svg')).not.toBeNull();
});
