/** Charts that are hard to draw, for tests and for looking at. Numbers are invented. */
import type { Axis, ChartData, Series } from '../../src/sheet/chart-data.ts';

type Point = readonly [number, number];

export function sample(f: (x: number) => number, from: number, to: number): readonly Point[] {
  return Array.from({ length: 121 }, (_, i) => {
    const x = from + ((to - from) * i) / 120;
    return [x, f(x)] as const;
  });
}

export function axis(label: string, unit: string, from: number, to: number): Axis {
  return { label, unit, from, to };
}

export function chart(over: Partial<ChartData>): ChartData {
  return {
    title: 'Height over time',
    x: axis('Time', 's', 0, 10),
    y: axis('Height', 'mm', 0, 10),
    series: [{ label: 'Height', points: sample((x) => x, 0, 10), now: undefined }],
    marks: [],
    limits: [],
    now: undefined,
    ...over,
  };
}

const GEARS = [3, 2, 1.4, 1, 0.8, 0.6];
const NAMES = ['1st', '2nd', '3rd', '4th', '5th', '6th'];

function gear(ratio: number, i: number): Series {
  const f = (speed: number) => speed * 45 * ratio;
  return { label: NAMES[i]!, points: sample(f, 0, 150), now: f(70) };
}

function sawTooth(): readonly Point[] {
  const tops = GEARS.slice(0, 4).map((ratio) => 5400 / (45 * ratio));
  return tops.flatMap((top, i) => {
    const start = tops[i - 1] ?? 0;
    return [
      [start, start * 45 * GEARS[i]!],
      [top, 5400],
    ] as const;
  });
}

const TORQUE = (shift: number) => (x: number) => 1300 + 1000 * Math.sin(x / 1500 - shift);

export const CHARTS: readonly (readonly [name: string, data: ChartData])[] = [
  [
    'a line a gear',
    chart({
      title: 'Engine speed against road speed',
      x: axis('Road speed', 'mph', 0, 150),
      y: axis('Engine speed', 'rpm', 0, 20250),
      series: GEARS.map(gear),
      marks: [
        { axis: 'y', value: 5500, label: 'Redline' },
        { axis: 'x', value: 70, label: 'Cruise' },
      ],
      now: 70,
    }),
  ],
  [
    'a saw-tooth',
    chart({
      x: axis('Road speed', 'mph', 0, 120),
      y: axis('Engine speed', 'rpm', 0, 5400),
      series: [{ label: 'Engine speed', points: sawTooth(), now: undefined }],
      marks: [{ axis: 'y', value: 5400, label: 'Redline' }],
    }),
  ],
  [
    'a window',
    chart({
      x: axis('Disc wear', 'in', 0, 0.12),
      y: axis('Gap when worn', 'in', -0.255, 0.165),
      series: [
        { label: 'Gap when worn', points: sample((x) => 0.165 - 3.5 * x, 0, 0.12), now: 0.025 },
      ],
      marks: [{ axis: 'x', value: 0.08, label: 'Disc worn out' }],
      limits: [{ least: 0.125, most: 0.2, label: 'Window' }],
      now: 0.04,
    }),
  ],
  [
    'long names, gaps and lines that end early',
    chart({
      x: axis('Engine speed', 'rpm', 600, 6000),
      y: axis('Torque at the wheels in first gear, old gearbox and new', 'lbf·ft', 0, 2300),
      series: [
        {
          label: 'Old three-speed automatic',
          points: sample((x) => (x > 2000 && x < 2500 ? Number.NaN : TORQUE(0)(x)), 600, 6000),
          now: 2200,
        },
        { label: 'Wide five-speed', points: sample(TORQUE(0.3), 600, 6000), now: Number.NaN },
        { label: 'Close five-speed, road', points: sample(TORQUE(0.4), 600, 4000), now: 1500 },
      ],
      marks: [
        { axis: 'y', value: 2000, label: 'Tyres spin' },
        { axis: 'y', value: 90_000, label: 'Shaft breaks' },
        { axis: 'x', value: 5900, label: 'Redline' },
        { axis: 'x', value: 5800, label: 'Power peak' },
        { axis: 'x', value: 5600, label: 'Advised limit' },
      ],
      now: 1500,
    }),
  ],
  [
    'twelve lines close together',
    chart({
      series: Array.from({ length: 12 }, (_, i) => ({
        label: `Curve number ${i + 1}`,
        points: sample((x) => 5 + 0.02 * i * x, 0, 10),
        now: 5 + 0.06 * i,
      })),
      now: 3,
    }),
  ],
  [
    'one point',
    chart({
      x: axis('x', '', 1, 1),
      y: axis('y', '', 3, 3),
      series: [{ label: 'only', points: [[1, 3]], now: 3 }],
      now: 1,
    }),
  ],
  ['no lines', chart({ series: [] })],
  [
    'no values',
    chart({
      y: axis('Height', 'mm', Number.NaN, Number.NaN),
      series: [{ label: 'none', points: sample(() => Number.NaN, 0, 10), now: undefined }],
    }),
  ],
  [
    'large numbers',
    chart({
      x: axis('Life', 'm', 0, 1e7),
      y: axis('Force', 'N', -2e9, 2e9),
      series: [{ label: 'Load', points: sample((x) => 400 * x - 2e9, 0, 1e7), now: undefined }],
    }),
  ],
  [
    'tiny numbers',
    chart({
      y: axis('Film', 'm', 0, 2e-7),
      series: [{ label: 'Oil', points: sample((x) => 2e-8 * x, 0, 10), now: 1e-7 }],
      now: 5,
    }),
  ],
];
