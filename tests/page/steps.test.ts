import { expect, test } from 'vitest';
import { createSteps, formatDay, type Ticks } from '../../src/page/steps.ts';
import type { Step, StepsBlock } from '../../src/sheet/sheet.ts';

const step = (id: string): Step => ({
  id,
  text: id,
  tokens: [{ type: 'text', raw: id, text: id }],
});
const block: StepsBlock = {
  kind: 'steps',
  line: 1,
  problems: [],
  title: 'Sign-off',
  steps: [step('clean'), step('torque')],
};

function makeTicks(some: Partial<Ticks> = {}): Ticks {
  return {
    dayOf: () => undefined,
    tick: () => {},
    signerOf: () => undefined,
    worker: () => '',
    setWorker: () => {},
    ...some,
  };
}

test('a ticked step shows its day, and the rest are counted', () => {
  const days = new Map([['clean', '2026-03-14']]);
  const view = createSteps(block, makeTicks({ dayOf: (one) => days.get(one.id) }));
  const boxes = [...view.element.querySelectorAll<HTMLInputElement>('li input')];
  expect(boxes.map((box) => box.checked)).toEqual([true, false]);
  expect(view.element.querySelector('time')?.textContent).toBe('14 Mar 2026');
  expect(view.element.textContent).toContain('One step left.');
});

test('ticking tells which step and which way', () => {
  const told: (readonly [string, boolean])[] = [];
  const view = createSteps(block, makeTicks({ tick: (one, done) => told.push([one.id, done]) }));
  document.body.replaceChildren(view.element);
  view.element.querySelectorAll('input')[1]?.click();
  expect(told).toEqual([['torque', true]]);
});

test('what was undone elsewhere shows after a refresh', () => {
  const days = new Map([['clean', '2026-03-14']]);
  const view = createSteps(block, makeTicks({ dayOf: (one) => days.get(one.id) }));
  days.clear();
  view.refresh();
  expect(view.element.querySelector('input')?.checked).toBe(false);
  expect(view.element.textContent).toContain('2 steps left.');
});

test('a box is named by its step', () => {
  const view = createSteps(block, makeTicks());
  document.body.replaceChildren(view.element);
  expect(view.element.querySelector('input')?.labels?.[0]?.textContent).toBe('clean');
});

test('a day that is none is shown as it stands', () => {
  expect(formatDay('soon')).toBe('soon');
});

test('a step that was signed tells by whom, and who signs from now on can be changed', () => {
  const signers: string[] = [];
  const ticks = makeTicks({
    dayOf: () => '2026-03-14',
    signerOf: (one) => (one.id === 'clean' ? 'Ann' : undefined),
    worker: () => 'Bob',
    setWorker: (name) => signers.push(name),
  });
  const { element } = createSteps(block, ticks);
  const days = [...element.querySelectorAll('time')].map((day) => day.textContent);
  expect(days).toEqual(['14 Mar 2026, Ann', '14 Mar 2026']);
  const field = element.querySelector<HTMLInputElement>('.signer input')!;
  expect(field.value).toBe('Bob');
  field.value = ' Cy ';
  field.dispatchEvent(new Event('change'));
  expect(signers).toEqual(['Cy']);
});

test('on paper there is a line to sign on', () => {
  const { element } = createSteps(block, makeTicks());
  expect(element.querySelector('.signature.print-only')?.textContent).toContain('Signed');
});
