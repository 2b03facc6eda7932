import type { MapData } from '../../src/sheet/map-data.ts';

/** z = x + 10 y over 0 to 4 and 0 to 2; the job at 1 and 1. */
export function makeMap(changes: Partial<MapData> = {}): MapData {
  const [xs, ys] = [
    [0, 1, 2, 3, 4],
    [0, 1, 2],
  ];
  return {
    title: 'Made map',
    x: { label: 'Axle', unit: '', from: 0, to: 4 },
    y: { label: 'Tyre', unit: 'in', from: 0, to: 2 },
    z: { label: 'Speed', unit: 'rpm', from: 0, to: 24 },
    xs,
    ys,
    values: ys.flatMap((y) => xs.map((x) => x + 10 * y)),
    marks: [],
    limits: [],
    now: { x: 1, y: 1, z: 11 },
    ...changes,
  };
}
