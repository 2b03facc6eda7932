const TURN = 2 * Math.PI;
const MINUTES = 12 * 60;

/** An angle in rad, clockwise from 12 o'clock, as a clock shows it: `4:16`, `12:00`. */
export function formatClock(angle: number): string {
  const share = angle / TURN - Math.floor(angle / TURN);
  const minutes = Math.round(share * MINUTES) % MINUTES;
  const hour = Math.floor(minutes / 60) || 12;
  return `${hour}:${String(minutes % 60).padStart(2, '0')}`;
}

/** Point at a distance from a centre, clockwise from 12 o'clock, in px with y downward. */
export function atClock(
  centre: readonly [x: number, y: number],
  distance: number,
  angle: number,
): readonly [x: number, y: number] {
  return [centre[0] + distance * Math.sin(angle), centre[1] - distance * Math.cos(angle)];
}
