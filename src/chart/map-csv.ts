import type { MapData } from '../sheet/map-data.ts';
import { axisHead, formatCSV, formatNumber } from './csv.ts';

/**
 * A map as CSV (RFC 4180): a head with units, and a row for each place with its x, its y and the
 * result there in full precision, the lowest y first. Where there is no result the cell is empty.
 */
export function mapCSV({ x, y, z, xs, ys, values }: MapData): string {
  const rows = ys.flatMap((up, j) =>
    xs.map((across, i) => [across, up, values[j * xs.length + i]!].map(formatNumber)),
  );
  return formatCSV([[x, y, z].map(axisHead), ...rows]);
}
