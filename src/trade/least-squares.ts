/** What a linear least-squares fit found. */
export interface LinearFit {
  readonly coefficients: readonly number[];
  /** Reading less fitted value, by reading. */
  readonly residuals: readonly number[];
  /** Inverse of the normal matrix: times the variance of a reading, the covariance of the coefficients. */
  readonly inverse: readonly (readonly number[])[];
}

/**
 * The coefficients whose sum of columns comes nearest to the readings, all readings weighing the
 * same. The columns must be independent; where they are not, the coefficients are NaN.
 */
export function fitLinear(
  columns: readonly (readonly number[])[],
  readings: ArrayLike<number>,
): LinearFit {
  const inverse = invert(columns.map((a) => columns.map((b) => dot(a, b))));
  const moments = columns.map((column) => dot(column, readings));
  const coefficients = inverse.map((row) => dot(row, moments));
  const residuals = Array.from(readings, (reading, i) =>
    columns.reduce((left, column, j) => left - column[i]! * coefficients[j]!, reading),
  );
  return { coefficients, residuals, inverse };
}

function dot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += a[i]! * b[i]!;
  return sum;
}

/** Gauss and Jordan's elimination with the largest pivot of each column. */
function invert(matrix: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const size = matrix.length;
  const rows = matrix.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))]);
  for (let i = 0; i < size; i += 1) {
    const pivot = findPivot(rows, i);
    [rows[i], rows[pivot]] = [rows[pivot]!, rows[i]!];
    clearColumn(rows, i);
  }
  return rows.map((row) => row.slice(size));
}

function findPivot(rows: readonly (readonly number[])[], column: number): number {
  let best = column;
  for (let i = column + 1; i < rows.length; i += 1)
    if (Math.abs(rows[i]![column]!) > Math.abs(rows[best]![column]!)) best = i;
  return best;
}

/** Mutates `rows`: 1 on the diagonal of the column, 0 elsewhere. */
function clearColumn(rows: number[][], column: number): void {
  const pivot = rows[column]!.map((value) => value / rows[column]![column]!);
  rows.forEach((row, i) => {
    const factor = row[column]!;
    rows[i] = i === column ? pivot : row.map((value, j) => value - factor * pivot[j]!);
  });
}
