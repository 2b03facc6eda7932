import { expect, test } from 'vitest';
import { layOutFrame, listColumn } from '../../src/chart/chart-frame.ts';
import { planChart } from '../../src/chart/chart-plan.ts';
import { axis, CHARTS, chart } from '../support/chart-cases.ts';

function lay(data: (typeof CHARTS)[number][1], width: number, fixed?: number) {
  return layOutFrame(data, planChart(data, width, 250), width, 250, fixed);
}

test.each(CHARTS)('%s: the frame lies inside the drawing and has room', (_, data) => {
  for (const width of [300, 320, 390, 700, 1000]) {
    const { frame, height } = lay(data, width);
    expect(frame.left).toBeGreaterThan(0);
    expect(frame.right - frame.left).toBeGreaterThan(width * 0.4);
    expect(frame.bottom - frame.top).toBeGreaterThanOrEqual(120);
    expect(frame.bottom).toBeLessThan(height);
  }
});

test('numbers of an axis have the same decimals', () => {
  const { yTicks } = lay(chart({ y: axis('y', '', 0, 0.6) }), 700);
  expect(yTicks).toEqual(['0.0', '0.1', '0.2', '0.3', '0.4', '0.5', '0.6']);
});

test('a wished height is kept where labels fit', () => {
  expect(lay(chart({}), 700, 500).height).toBe(500);
  expect(lay(CHARTS[4]![1], 320, 150).height).toBeGreaterThan(300);
});

test('labels at the right stand in a column of their own', () => {
  const data = CHARTS[0]![1];
  const names = listColumn(planChart(data, 700, 250)).map(({ lines }) => lines[0]);
  expect(names).toEqual(['5th', '6th', 'Redline 5500']);
});
