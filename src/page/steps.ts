import type { Step, StepsBlock } from '../sheet/sheet.ts';
import { h, setAttribute } from './element.ts';
import { createInline } from './narrative.ts';
import { createSignature } from './signature.ts';
import type { View } from './view.ts';

export interface Ticks {
  /** The day a step was ticked off, `2026-03-14`; undefined while it is open. */
  dayOf(step: Step): string | undefined;
  tick(step: Step, done: boolean): void;
  /** Who signed it, where that is known. */
  signerOf(step: Step): string | undefined;
  /** Who signs what is ticked from now on. */
  worker(): string;
  setWorker(name: string): void;
}

/** A checklist: each step with a tick that is kept, and the day it was made. */
export function createSteps(block: StepsBlock, ticks: Ticks): View {
  const lines = block.steps.map((step) => createStep(step, ticks));
  const left = h('p', { class: 'steps-left' });
  const worker = h('input', {
    type: 'text',
    autocomplete: 'off',
    on: { change: () => ticks.setWorker(worker.value.trim()) },
  });
  const element = h(
    'div',
    { class: 'steps', role: 'group', 'aria-label': block.title },
    h('p', { class: 'steps-title' }, block.title),
    h('ol', {}, ...lines.map((line) => line.element)),
    h('div', { class: 'steps-foot' }, left, h('label', { class: 'signer' }, 'Signed by ', worker)),
    createSignature('Signed'),
  );

  function refresh(): void {
    for (const line of lines) line.refresh();
    if (document.activeElement !== worker) worker.value = ticks.worker();
    left.textContent = formatLeft(block.steps.filter((step) => !ticks.dayOf(step)).length);
  }

  refresh();
  return { element, cells: [], refresh };
}

function createStep(step: Step, ticks: Ticks): { element: HTMLElement; refresh(): void } {
  const box = h('input', { type: 'checkbox', on: { change: () => ticks.tick(step, box.checked) } });
  const day = h('time', { class: 'ticked-on' });
  const words = h('span', {}, ...createInline(step.tokens));
  return {
    element: h('li', {}, h('label', {}, box, words, day)),
    refresh() {
      const on = ticks.dayOf(step);
      box.checked = on !== undefined;
      day.textContent = on === undefined ? '' : formatSigned(on, ticks.signerOf(step));
      setAttribute(day, 'datetime', on);
    },
  };
}

function formatSigned(on: string, by: string | undefined): string {
  return by === undefined ? formatDay(on) : `${formatDay(on)}, ${by}`;
}

function formatLeft(count: number): string {
  if (count === 0) return 'All steps done.';
  return count === 1 ? 'One step left.' : `${count} steps left.`;
}

/** `14 Mar 2026`. The day is a day of the calendar, not a moment: no time zone may move it. */
export function formatDay(day: string): string {
  const date = new Date(`${day}T00:00:00Z`);
  if (Number.isNaN(date.getTime())) return day;
  return new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeZone: 'UTC' }).format(date);
}
