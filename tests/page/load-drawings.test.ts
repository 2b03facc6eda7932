import { expect, test } from 'vitest';
import { loadAllDrawings, loadChain, loadChart, loadGauge } from '../../src/page/load-drawings.ts';

test('each kind of drawing can be had', async () => {
  const chart = await loadChart();
  expect(Object.keys(chart).sort()).toEqual([
    'chartSVG',
    'chartSentence',
    'createChartTable',
    'sweepChart',
  ]);
  expect((await loadChain()).name).toBe('drawChain');
  expect((await loadGauge()).name).toBe('drawGauge');
});

test('all of them can be had beforehand', async () => {
  await expect(loadAllDrawings()).resolves.toBeUndefined();
});
