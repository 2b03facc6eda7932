import type { Display } from './sheet.ts';

/** The step of the last digit, or of the fraction, that a value is shown to, in SI; undefined where the sheet names none. */
export function displayStep({ unit, resolution, fraction }: Display): number | undefined {
  const step = resolution ?? (fraction === undefined ? undefined : 1 / fraction);
  return step === undefined ? undefined : step * (unit?.factor ?? 1);
}
