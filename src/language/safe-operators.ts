/** Division and power give NaN where they have no value, so that nothing after them can hide it. */
export function divide(a: number, b: number): number {
  return b === 0 || b - b !== 0 ? Number.NaN : a / b;
}

/** A power may hide what it is made of: NaN^0 is 1 and ∞^-1 is 0 to the machine. */
export function raise(base: number, exponent: number): number {
  const x = base ** exponent;
  return x - x === 0 && base - base === 0 ? x : Number.NaN;
}
