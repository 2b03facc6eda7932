/** Why a number could not be read, as a sentence; the stretch is the offender. */
export interface ScanFailure {
  readonly failure: 'ambiguous-number' | 'unknown-unit' | 'malformed-number';
  readonly message: string;
  readonly from: number;
  readonly to: number;
}

export function isFailure(scan: object | undefined): scan is ScanFailure {
  return scan !== undefined && 'failure' in scan;
}
