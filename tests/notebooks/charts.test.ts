import { describe, expect, test } from 'vitest';
import type { ChartData, Series } from '../../src/sheet/chart-data.ts';
import { sweepChart } from '../../src/sheet/sweep.ts';
import { type Entries, numbersIn, openNotebooks, work } from '../support/notebooks.ts';

const BOOK = openNotebooks();
const CHARTS = BOOK.charts
  .filter(({ statement }) => statement.against === undefined)
  .map(({ sheet, statement }) => [sheet, statement.title] as const);
const MAPS = BOOK.charts
  .filter(({ statement }) => statement.against !== undefined)
  .map(({ sheet, statement }) => [sheet, statement.title] as const);

describe.each(CHARTS)('%s, chart "%s"', (sheet, title) => {
  const data = draw(sheet, title);

  test('has a line of numbers for each result, and one now', () => {
    expect(data.series).not.toEqual([]);
    for (const { points, now } of data.series) {
      expect(points.length).toBeGreaterThan(50);
      expect(points.every(([x]) => Number.isFinite(x))).toBe(true);
      expect(now).toSatisfy(Number.isFinite);
    }
  });

  test('shows its marks and windows', () => {
    const { statement } = BOOK.charts.find((chart) => chart.statement.title === title)!;
    expect(data.marks).toHaveLength(statement.marks.length);
    expect(data.limits).toHaveLength(statement.limits.length);
  });
});

test.each(MAPS)('%s, map "%s", has lines of numbers', (sheet, title) => {
  const { series } = draw(sheet, title);
  expect(series.length).toBeGreaterThan(2);
  for (const { points } of series) {
    expect(points.length).toBeGreaterThan(20);
    expect(points.some(([, y]) => Number.isFinite(y))).toBe(true);
  }
});

describe('engine speed against road speed', () => {
  const data = draw('20-gearing', 'Engine speed against road speed');

  test('has a line a gear, named after it', () => {
    expect(data.series.map(({ label }) => label)).toEqual(['1st', '2nd', '3rd', '4th', '5th']);
  });

  test('is the sheet worked again at each speed', () => {
    for (const mph of [15, 90]) {
      const solved = work(BOOK, '20-gearing', { cruise_speed: `${mph}` });
      const drawn = data.series.map((series) => readAt(series, mph));
      numbersIn(solved, 'engine_speed_at_cruise', 'rpm').forEach((speed, gear) => {
        expect(drawn[gear]).toBeCloseTo(speed, 6);
      });
    }
  });

  test('follows another set of gears', () => {
    const six = draw('20-gearing', 'Engine speed against road speed', { gear_ratios: 'Six-speed' });
    expect(six.series).toHaveLength(6);
  });
});

describe('the run through the gears', () => {
  const [line] = draw('20-gearing', 'The run through the gears').series;
  const heights = line!.points.map(([, y]) => y);

  test('is never above the redline', () => {
    expect(Math.max(...heights)).toBeLessThanOrEqual(5500 * (1 + 1e-12));
  });

  test('falls once a shift, and each time to what the sheet says', () => {
    const falls = heights.filter((y, i) => y < (heights[i - 1] ?? 0) - 1);
    const after = numbersIn(work(BOOK, '20-gearing'), 'engine_speed_after_upshift', 'rpm');
    expect(falls).toHaveLength(after.length);
    falls.forEach((y, i) => {
      expect(Math.abs(y - after[i]!)).toBeLessThan(1);
    });
  });

  test('ends where top gear reaches the redline', () => {
    const short = draw('20-gearing', 'The run through the gears', { axle_ratio: '5' });
    const last = short.series[0]!.points.findLast(([, y]) => Number.isFinite(y))!;
    const limits = numbersIn(
      work(BOOK, '20-gearing', { axle_ratio: '5' }),
      'road_speed_at_redline',
      'mph',
    );
    expect(last[0]).toBeCloseTo(limits.at(-1)!, 1);
  });
});

test('cruise engine speed rises in step with the axle ratio', () => {
  for (const { points } of draw('20-gearing', 'Cruise engine speed over axle ratio').series) {
    const slopes = points.map(([axle, speed]) => speed / axle);
    expect(Math.max(...slopes) / Math.min(...slopes)).toBeCloseTo(1, 9);
  }
});

test('the gap falls by the lever ratio for each bit of wear', () => {
  const data = draw('70-release-bearing', 'Gap left against disc wear', { lever_ratio: '4' });
  const { points } = data.series[0]!;
  const [first, last] = [points[0]!, points.at(-1)!];
  expect(first).toEqual([0, expect.closeTo(0.165, 12)]);
  expect((last[1] - first[1]) / (last[0] - first[0])).toBeCloseTo(-4, 9);
});

function draw(sheet: string, title: string, entries: Entries = {}): ChartData {
  const { frame } = work(BOOK, sheet, entries);
  const chart = BOOK.charts.find((each) => each.statement.title === title)!;
  const data = sweepChart(BOOK, frame, chart.statement, sheet, 'inch-pound');
  if ('code' in data) throw new Error(data.message);
  return data;
}

function readAt({ points }: Series, x: number): number {
  return points.find(([place]) => Math.abs(place - x) < 1e-9)![1];
}
