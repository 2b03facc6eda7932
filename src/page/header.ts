import type { History } from '../job/history.ts';
import type { Saved } from '../job/keeper.ts';
import type { Job } from '../job/record.ts';
import { type Child, fill, h, setAttribute } from './element.ts';
import { JOBS_HREF } from './first-screen.ts';
import { createIcon, type IconName } from './icon.ts';

export interface HeaderOptions {
  readonly home: string;
  undo(): void;
  redo(): void;
}

export interface Header {
  readonly element: HTMLElement;
  /** Mutates the header: what can be undone, and how the job is called. */
  show(history: History): void;
  /** Mutates the header: when the job was last saved. */
  showSaved(saved: Saved): void;
}

const LONGEST_NAME = 60;

/** The line at the head of the page: the job, undo and redo, whether it is saved, and `tools`. */
export function createHeader(options: HeaderOptions, ...tools: readonly HTMLElement[]): Header {
  const title = h('bdi', { class: 'job-title' });
  const saved = h('span', { class: 'saved' });
  const undo = createTool('undo', options.undo);
  const redo = createTool('redo', options.redo);
  return {
    element: h(
      'header',
      { class: 'head' },
      h('a', { class: 'brand', href: options.home }, 'Layshaft'),
      h('a', { class: 'tool jobs-link', href: JOBS_HREF }, 'Jobs'),
      title,
      saved,
      undo,
      redo,
      ...tools,
    ),
    show({ job, past, future }) {
      title.textContent = nameJob(job);
      nameTool(undo, 'Undo', past.at(-1)?.label);
      nameTool(redo, 'Redo', future.at(-1)?.label);
    },
    showSaved(outcome) {
      fill(saved, ...tellSaved(outcome));
    },
  };
}

/** On a narrow page there is room for when, and not for where. */
function tellSaved(outcome: Saved): readonly Child[] {
  if (outcome.state === 'failed') return ['Not saved'];
  const where = h('span', { class: 'wide-only' }, ' in this browser');
  return ['Saved', where, ` ${formatTime(outcome.at)}`];
}

function nameJob({ vehicle, title }: Job): string {
  const name = vehicle === '' ? title : `${vehicle}: ${title}`;
  return name.length <= LONGEST_NAME ? name : `${name.slice(0, LONGEST_NAME - 1)}…`;
}

function createTool(icon: IconName, act: () => void): HTMLElement {
  const press = (event: Event): void => {
    if ((event.currentTarget as Element).ariaDisabled !== 'true') act();
  };
  return h('button', { type: 'button', class: 'tool', on: { click: press } }, createIcon(icon));
}

/** The name tells what would be undone. With nothing to undo the button keeps the focus and does nothing. */
function nameTool(button: HTMLElement, verb: string, label: string | undefined): void {
  const name =
    label === undefined ? `${verb}: nothing to ${verb.toLowerCase()}` : `${verb}: ${label}`;
  setAttribute(button, 'aria-label', name);
  setAttribute(button, 'title', name);
  setAttribute(button, 'aria-disabled', label === undefined ? 'true' : undefined);
}

function formatTime(at: Date): string {
  return new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' }).format(at);
}
