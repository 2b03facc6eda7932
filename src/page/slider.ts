import { h, setAttribute } from './element.ts';

export interface SliderOptions {
  /** Label of the given. */
  readonly label: string;
  /** Called while the knob moves, with a number on the scale. */
  move(value: number): void;
  /** Called when it has been let go. */
  settle(): void;
}

/** A scale in the unit of the field. */
export interface Scale {
  readonly from: number;
  readonly to: number;
  readonly step: number;
}

export interface Slider {
  readonly element: HTMLElement;
  /** Mutates the slider. A value outside the scale rests at its end; `text` is read out. */
  show(scale: Scale, value: number | undefined, text: string): void;
}

/** A slider with a button at each end, for those who cannot drag or want one step exactly. */
export function createSlider(options: SliderOptions): Slider {
  let scale: Scale = { from: 0, to: 1, step: 1 };
  let value: number | undefined;
  const range = h('input', {
    type: 'range',
    step: 'any',
    'aria-label': options.label,
    on: { input: drag, change: options.settle, keydown: onKey },
  });
  const less = createStepper('−', `Less: ${options.label}`, () => stepBy(-1));
  const more = createStepper('+', `More: ${options.label}`, () => stepBy(1));

  function drag(): void {
    options.move(snap(range.valueAsNumber, scale));
  }

  function stepBy(steps: number): void {
    goTo(stepFrom(value ?? scale.from, steps, scale));
  }

  function goTo(next: number): void {
    options.move(next);
    options.settle();
  }

  /** The scale is continuous for the browser, so that a typed value between two steps shows in its place. */
  function onKey(event: Event): void {
    const { key } = event as KeyboardEvent;
    const steps = STEPS[key];
    if (steps === undefined && key !== 'Home' && key !== 'End') return;
    event.preventDefault();
    if (steps !== undefined) stepBy(steps);
    else goTo(key === 'Home' ? scale.from : scale.to);
  }

  return {
    element: h('div', { class: 'slider' }, less, range, more),
    show(next, now, text) {
      scale = next;
      value = now;
      setAttribute(range, 'min', String(scale.from));
      setAttribute(range, 'max', String(scale.to));
      range.valueAsNumber = clamp(now ?? scale.from, scale);
      setAttribute(range, 'aria-valuetext', text);
      // A button that a finger rests on must not lose the focus, so it is not disabled at the end.
      setAttribute(
        less,
        'aria-disabled',
        now !== undefined && now <= scale.from ? 'true' : undefined,
      );
      setAttribute(
        more,
        'aria-disabled',
        now !== undefined && now >= scale.to ? 'true' : undefined,
      );
    },
  };
}

const STEPS: Readonly<Record<string, number>> = {
  ArrowLeft: -1,
  ArrowDown: -1,
  ArrowRight: 1,
  ArrowUp: 1,
  PageDown: -10,
  PageUp: 10,
};

function createStepper(sign: string, label: string, act: () => void): HTMLElement {
  const press = (event: Event): void => {
    if ((event.currentTarget as Element).ariaDisabled !== 'true') act();
  };
  return h('button', { type: 'button', 'aria-label': label, on: { click: press } }, sign);
}

/** The nearest step of the scale; steps count from 0, not from the end of the scale. */
export function snap(value: number, scale: Scale): number {
  return clamp(tidy(Math.round(value / scale.step) * scale.step), scale);
}

/** So many steps on; from between two steps, the first goes to the next one. */
export function stepFrom(value: number, steps: number, scale: Scale): number {
  const place = value / scale.step;
  const whole = Math.round(place);
  const between = Math.abs(place - whole) > 1e-6;
  const start = between ? (steps > 0 ? Math.floor(place) : Math.ceil(place)) : whole;
  return clamp(tidy((start + steps) * scale.step), scale);
}

function clamp(value: number, { from, to }: Scale): number {
  return Math.min(Math.max(value, from), to);
}

/** 0.15000000000000002 is what binary arithmetic makes of 150 steps of 0.001. */
function tidy(value: number): number {
  return Number(value.toPrecision(12));
}
