import type { ChartData } from '../sheet/chart-data.ts';
import type { MapData } from '../sheet/map-data.ts';
import type { ChartBlock, Sheet } from '../sheet/sheet.ts';
import type { Desk } from './desk.ts';
import { h } from './element.ts';
import { loadChart, loadMap } from './load-drawings.ts';
import { createSwept, type SweptTool } from './swept.ts';
import type { View } from './view.ts';

/** A chart: lines over one value, or, over two values at once, a map. */
export function createChart(desk: Desk, sheet: Sheet, { chart }: ChartBlock): View {
  if (chart === undefined) return { element: h('div'), cells: [], refresh: () => {} };
  return chart.against === undefined
    ? createSwept(desk, sheet, chart, loadLines)
    : createSwept(desk, sheet, chart, loadContours);
}

async function loadLines(): Promise<SweptTool<ChartData>> {
  const { sweepChart, chartSentence, createChartTable, chartSVG } = await loadChart();
  return {
    sweep: sweepChart,
    sentence: chartSentence,
    table: createChartTable,
    draw: chartSVG,
  };
}

async function loadContours(): Promise<SweptTool<MapData>> {
  const { sweepMap, mapSentence, createMapTable, mapSVG } = await loadMap();
  return { sweep: sweepMap, sentence: mapSentence, table: createMapTable, draw: mapSVG };
}
