/**
 * The exponent k of `time = c · size^k`, by least squares on the logarithms: 1 is linear growth, 2 is
 * quadratic. Needs two different sizes at least.
 */
export function fitExponent(points: readonly (readonly [size: number, time: number])[]): number {
  const logs = points.map(([size, time]) => [Math.log(size), Math.log(time)] as const);
  const x = mean(logs.map(([size]) => size));
  const y = mean(logs.map(([, time]) => time));
  const above = logs.reduce((sum, [size, time]) => sum + (size - x) * (time - y), 0);
  const below = logs.reduce((sum, [size]) => sum + (size - x) ** 2, 0);
  return above / below;
}

function mean(numbers: readonly number[]): number {
  return numbers.reduce((sum, x) => sum + x, 0) / numbers.length;
}
