import { formatClock } from '../clock.ts';
import type { DrawingData } from '../declaration.ts';
import { listReadings } from './dial-layout.ts';

const HALF_TURN = Math.PI;

/** The readings in a row: `12:00 0 thou, 1:30 10.5 thou`. */
export function sayReadings(data: DrawingData): string {
  const readings = listReadings(data).map(({ time, text }) => `${time} ${text}`);
  return readings.length === 0 ? 'There are no readings yet' : `Readings: ${readings.join(', ')}`;
}

/** Where the centre of the bore stands; undefined while that is not known. */
export function sayOffset(data: DrawingData): string | undefined {
  const direction = data.number('direction');
  if (data.number('offset') === undefined || direction === undefined) return undefined;
  return `The bore’s centre stands ${data.show('offset')} from the crank’s axis, toward ${formatClock(direction + HALF_TURN)}`;
}

/** Which dowel and where to; undefined while that is not known. */
export function sayDowel(data: DrawingData): string | undefined {
  const [dowel, direction] = [data.number('dowel'), data.number('dowel_direction')];
  if (dowel === undefined || direction === undefined) return undefined;
  if (dowel === 0) return 'Plain dowels';
  return `Dowels of ${data.show('dowel')}, throw toward ${formatClock(direction)}`;
}
