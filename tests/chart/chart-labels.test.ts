import { expect, test } from 'vitest';
import { layOutFrame } from '../../src/chart/chart-frame.ts';
import { listDots, placeLabels } from '../../src/chart/chart-labels.ts';
import { planChart } from '../../src/chart/chart-plan.ts';
import { lettersHeight } from '../../src/drawing/lettering.ts';
import type { ChartData } from '../../src/sheet/chart-data.ts';
import { CHARTS, chart, sample } from '../support/chart-cases.ts';

function label(data: ChartData, width = 700) {
  const plan = planChart(data, width, 250);
  const frame = layOutFrame(data, plan, width, 250, undefined);
  const { left, right, top, bottom } = frame.frame;
  const { x, y } = plan.range;
  return placeLabels(data, plan, frame, ([px, py]) => [
    left + ((px - x[0]) / (x[1] - x[0])) * (right - left),
    bottom - ((py - y[0]) / (y[1] - y[0])) * (bottom - top),
  ]);
}

function textsOf(data: ChartData, names: string): readonly string[] {
  return label(data)
    .filter((each) => each.names === names)
    .map(({ letters }) => letters.lines.join(' '));
}

test.each(CHARTS)('%s: every line and mark that is planned gets its label', (_, data) => {
  const planned = planChart(data, 390, 250).labels.length;
  const placed = label(data, 390).filter(
    ({ names }) => names === 'mark' || typeof names === 'number',
  );
  expect(placed).toHaveLength(planned);
});

test('a window is named with its ends', () => {
  expect(textsOf(CHARTS[2]![1], 'limits')).toEqual(['Window 0.125 to 0.2']);
});

test('a lone dot has its value beside it', () => {
  expect(textsOf(CHARTS[2]![1], 'now')).toEqual(['0.025']);
});

test('dots that crowd share no value among them', () => {
  expect(textsOf(CHARTS[4]![1], 'now').length).toBeLessThan(4);
});

test('dots stand where the present point is on the chart', () => {
  const dots = (data: ChartData) => listDots(data, planChart(data, 700, 250));
  const series = [{ label: 'a', points: sample((x) => x, 0, 10), now: 4 }];
  expect(dots(chart({ series, now: 4 }))).toEqual([{ point: [4, 4], index: 0 }]);
  expect(dots(chart({ series, now: 11 }))).toEqual([]);
  expect(dots(chart({ series }))).toEqual([]);
  expect(dots(chart({ series: [{ ...series[0]!, now: Number.NaN }], now: 4 }))).toEqual([]);
});

test('a line that ends inside is led to its name', () => {
  const early = { label: 'Early', points: sample((x) => x, 0, 5), now: undefined };
  const [placed] = label(chart({ series: [early, { ...early, label: 'Same' }] }));
  expect(placed?.leader).not.toBe('');
  expect(placed?.names).toBe(0);
});

test('names of two lines keep a gap between them', () => {
  const names = ['Tunnel, centre line to side', 'Gearbox, centre line to side'];
  const series = names.map((name, i) => ({
    label: name,
    points: sample(() => 4 + i / 10, 0, 10),
    now: undefined,
  }));
  const [upper, lower] = label(chart({ series }), 390)
    .filter(({ names: named }) => typeof named === 'number')
    .map(({ letters }) => letters)
    .sort((a, b) => a.top - b.top);
  expect(upper!.lines.length).toBeGreaterThan(1);
  const foot = upper!.top + lettersHeight(upper!.lines, upper!.size);
  expect(lower!.top - foot).toBeGreaterThan(4);
});
