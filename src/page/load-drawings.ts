/*
 * What draws comes after the first results: it is more script than all the rest. Each of these is
 * loaded once, when the first drawing of its kind is shown or when the page has nothing else to do.
 */

export async function loadChart() {
  const [{ chartSVG }, { chartSentence }, { createChartTable }, { sweepChart }] = await Promise.all(
    [
      import('../chart/chart-svg.ts'),
      import('../chart/chart-sentence.ts'),
      import('./chart-numbers.ts'),
      import('../sheet/sweep.ts'),
    ],
  );
  return { chartSVG, chartSentence, createChartTable, sweepChart };
}

export async function loadMap() {
  const [{ mapSVG }, { mapSentence, mapStanding }, { createMapTable }, { sweepMap }] =
    await Promise.all([
      import('../chart/map-svg.ts'),
      import('../chart/map-sentence.ts'),
      import('./map-numbers.ts'),
      import('../sheet/sweep-two.ts'),
    ]);
  return { mapSVG, mapSentence, mapStanding, createMapTable, sweepMap };
}

export async function loadChain() {
  const { drawChain } = await import('../drawing/chain.ts');
  return drawChain;
}

export async function loadGauge() {
  const { drawGauge } = await import('../drawing/gauge.ts');
  return drawGauge;
}

export async function loadHistogram() {
  const { drawHistogram } = await import('../drawing/histogram.ts');
  return drawHistogram;
}

/** The kind of drawing that a sheet names. */
export async function loadDrawing(name: string) {
  const { findDrawing } = await import('../drawing/drawing-kinds.ts');
  return findDrawing(name)!;
}

/** All of it, for the sheets that are opened with the cable out. */
export async function loadAllDrawings(): Promise<void> {
  await Promise.all([
    loadChart(),
    loadMap(),
    loadChain(),
    loadGauge(),
    loadHistogram(),
    import('../drawing/drawing-kinds.ts'),
  ]);
}
