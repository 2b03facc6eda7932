/** The colours and the lettering of a drawing, as CSS values fit for SVG attributes. */
export interface Inks {
  readonly paper: string;
  readonly ink: string;
  readonly soft: string;
  readonly rule: string;
  /** Petrol: what the person sets and what the sheet answers with. */
  readonly set: string;
  readonly setWash: string;
  /** Rust: what can hurt or fails. */
  readonly warn: string;
  readonly warnWash: string;
  readonly good: string;
  /** Family for all lettering. */
  readonly plate: string;
}

const LIGHT = {
  paper: '#fbf9f4',
  ink: '#1c2529',
  soft: '#56626a',
  rule: '#d9d3c4',
  set: '#0b5c6b',
  setWash: '#e5f0f0',
  warn: '#9c3a12',
  warnWash: '#faebe0',
  good: '#20623b',
  plate:
    "'Atkinson Hyperlegible Next', 'Atkinson Hyperlegible', 'Helvetica Neue', Arial, 'Liberation Sans', sans-serif",
} as const satisfies Inks;

/**
 * The inks of a drawing on the page, which follow its light, dark and print colours; or, for a
 * file that stands alone, the light ones as they are. A file stands on white paper.
 */
export function createInks(standalone: boolean): Inks {
  if (standalone) return { ...LIGHT, paper: '#ffffff' };
  const inks = Object.entries(LIGHT).map(([name, value]) => [
    name,
    `var(${nameVariable(name)}, ${value})`,
  ]);
  return Object.fromEntries(inks) as unknown as Inks;
}

/** `setWash` is `--set-wash` on the page. */
function nameVariable(name: string): string {
  return `--${name.replace(/[A-Z]/g, (capital) => `-${capital.toLowerCase()}`)}`;
}
