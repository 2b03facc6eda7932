import { describe, expect, test } from 'vitest';
import { chartCaption, gaugeCaption } from '../../src/export/caption.ts';
import type { ChartData } from '../../src/sheet/chart-data.ts';

function chart(...now: readonly number[]): ChartData {
  return {
    title: 'Engine speed',
    x: { label: 'Road speed', unit: 'mph', from: 0, to: 150 },
    y: { label: 'Engine speed', unit: 'rpm', from: 0, to: 6000 },
    series: now.map((one, i) => ({ label: `${i + 4}th`, points: [], now: one })),
    marks: [],
    limits: [],
    now: 70,
  };
}

/** With plain blanks. */
const captionOf = (data: ChartData) => chartCaption(data).replaceAll('\u00a0', ' ');

describe('under a chart', () => {
  test('the last line is told against the one before it', () => {
    expect(captionOf(chart(3190, 2360))).toBe(
      'Engine speed. With road speed at 70 mph, engine speed is 2360 rpm for 5th, 830 rpm less than for 4th.',
    );
  });

  test('one line has nothing to be told against', () => {
    expect(captionOf(chart(3190))).toBe(
      'Engine speed. With road speed at 70 mph, engine speed is 3190 rpm.',
    );
  });

  test('two that are alike are the same', () => {
    expect(chartCaption(chart(3190, 3190))).toContain('the same as for 4th');
  });

  test('a chart without a point has its title', () => {
    expect(chartCaption(chart(Number.NaN))).toBe('Engine speed.');
  });
});

describe('under a gauge', () => {
  const gauge = (value: number, text: string) => ({
    title: 'Gap',
    least: { value: 1, text: '1 in' },
    most: { value: 2, text: '2 in' },
    values: [{ value, text }],
    below: undefined,
    above: undefined,
  });

  test.each([
    [1.5, '1.5 in', 'Gap: 1.5 in, inside the window of 1 in to 2 in.'],
    [0.5, '0.5 in', 'Gap: 0.5 in, below the window of 1 in to 2 in.'],
    [Number.NaN, '?', 'Gap: not known yet.'],
  ])('%d', (value, text, caption) => {
    expect(gaugeCaption(gauge(value, text), 0)).toBe(caption);
  });
});
