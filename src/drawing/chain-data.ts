/** A stack of dimensions: signed terms, each starting where the one before ended, and their sum. */
export interface ChainData {
  readonly title: string;
  readonly terms: readonly ChainTerm[];
  readonly total: ChainTotal;
}

export interface ChainTerm {
  readonly sign: 1 | -1;
  /** In the display unit; NaN while it is not known. */
  readonly value: number;
  /** With its unit: `3.212 in`. */
  readonly text: string;
  readonly label: string;
}

/** The closing dimension. */
export interface ChainTotal {
  readonly label: string;
  readonly value: number;
  readonly text: string;
}

/** Sign and value as they stand on the drawing: `− 0.250 in`; a negative value is bracketed. */
export function signedText({ sign, text }: ChainTerm): string {
  const value = /^[-−]/.test(text) ? `(${text})` : text;
  return `${sign === 1 ? '+' : '−'}\u00a0${value}`;
}

/** The chain in sentences. */
export function describeChain({ terms, total }: ChainData): string {
  const steps = terms.map(
    ({ sign, label, text, value }) =>
      `${sign === 1 ? 'plus' : 'minus'} ${label}, ${Number.isFinite(value) ? text : 'not known yet'}`,
  );
  const sum = Number.isFinite(total.value) ? total.text : 'not known yet';
  const chain = steps.length === 0 ? 'no terms' : steps.join('; ');
  return `Dimension chain: ${chain}. Closing dimension: ${total.label}, ${sum}.`;
}
