/** Round steps that people count in. */
const STEPS = [1, 2, 5, 10];

/** The round step that divides a range into about `count` parts, never into more than twice that. */
export function tickStep(from: number, to: number, count: number): number {
  const rough = (to - from) / Math.max(1, count);
  const decade = 10 ** Math.floor(Math.log10(rough));
  return decade * (STEPS.find((step) => step * decade >= rough * 0.85) ?? 10);
}

/** Multiples of a step that lie in a range. */
export function createTicks(from: number, to: number, step: number): readonly number[] {
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  // A quotient of whole numbers where the step is a fraction: 3 × 0.1 is not 0.3.
  const parts = step < 1 ? Math.round(1 / step) : 0;
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) =>
    parts > 0 ? (first + i) / parts : (first + i) * step,
  );
}

/** The range, widened to whole steps. */
export function niceRange(from: number, to: number, step: number): readonly [number, number] {
  return [Math.floor(from / step + 1e-9) * step, Math.ceil(to / step - 1e-9) * step];
}
