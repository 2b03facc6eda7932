/** What a limit gauge shows. Numbers are all in one unit; texts carry it. */
export interface GaugeData {
  readonly title: string;
  /** Lower end of the window; without it everything down to nothing passes. */
  readonly least?: Limit | undefined;
  /** Upper end of the window; without it everything upward passes. */
  readonly most?: Limit | undefined;
  /** One pointer each; those of a list carry a label. */
  readonly values: readonly GaugeValue[];
  /** What it means to be below the window. */
  readonly below?: string | undefined;
  /** What it means to be above the window. */
  readonly above?: string | undefined;
}

export interface Limit {
  readonly value: number;
  /** With its unit: `0.125 in`. */
  readonly text: string;
}

export interface GaugeValue {
  readonly label?: string | undefined;
  /** NaN while it is not known. */
  readonly value: number;
  readonly text: string;
  readonly spread?: Spread | undefined;
}

/** How sure a value is: ranges in the unit of the value, from low to high. */
export interface Spread {
  readonly likely?: readonly [number, number] | undefined;
  readonly worst?: readonly [number, number] | undefined;
}

export type Side = 'below' | 'above';

/** On which side of the window a value lies; undefined inside it, and while it is not known. */
export function sideOf(data: Pick<GaugeData, 'least' | 'most'>, value: number): Side | undefined {
  if (data.least !== undefined && value < data.least.value) return 'below';
  if (data.most !== undefined && value > data.most.value) return 'above';
  return undefined;
}

export function isKnown(value: GaugeValue): boolean {
  return Number.isFinite(value.value);
}
