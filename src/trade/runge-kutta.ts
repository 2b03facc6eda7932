/** Speed and distance of a car. */
export interface Motion {
  readonly speed: number;
  readonly distance: number;
}

/**
 * One step of the classical Runge-Kutta method, of fourth order: halve the step, and the error is a
 * sixteenth.
 *
 * @param rate acceleration at a speed
 */
export function stepMotion(
  rate: (speed: number) => number,
  { speed, distance }: Motion,
  step: number,
): Motion {
  const a1 = rate(speed);
  const v2 = speed + (step / 2) * a1;
  const a2 = rate(v2);
  const v3 = speed + (step / 2) * a2;
  const a3 = rate(v3);
  const v4 = speed + step * a3;
  const a4 = rate(v4);
  return {
    speed: speed + (step / 6) * (a1 + 2 * a2 + 2 * a3 + a4),
    distance: distance + (step / 6) * (speed + 2 * v2 + 2 * v3 + v4),
  };
}
