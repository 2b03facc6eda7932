import { inNamespace, SVG } from './element.ts';

/** Outlines on a field of 24 by 24. */
const OUTLINES = {
  undo: 'M9 5 4 10l5 5M4 10h10a6 6 0 0 1 0 12h-3',
  redo: 'M15 5l5 5-5 5M20 10H10a6 6 0 0 0 0 12h3',
  pass: 'M5 13l5 5L20 6',
  fail: 'M6 6l12 12M18 6L6 18',
  unknown: 'M6 12h12',
  before: 'M20 12H4M10 6l-6 6 6 6',
  after: 'M4 12h16M14 6l6 6-6 6',
  down: 'M12 4v16M6 14l6 6 6-6',
} as const;

export type IconName = keyof typeof OUTLINES;

/** A small drawing that stands beside words or for a named button. */
export function createIcon(name: IconName): Element {
  const outline = inNamespace(SVG, 'path', { d: OUTLINES[name] });
  return inNamespace(
    SVG,
    'svg',
    { viewBox: '0 0 24 24', class: 'icon', 'aria-hidden': 'true', focusable: 'false' },
    outline,
  );
}
