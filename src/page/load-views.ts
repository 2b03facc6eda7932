/*
 * What comes after the first results: how sure they are, charts, drawings, tables, steps, a change in
 * words, figures set out for print, questions asked backwards, practice.
 * Each is loaded once, when a sheet first needs it or when the page has nothing else to do.
 */

export async function loadDoubt() {
  return import('./doubt.ts');
}

export async function loadBlocks() {
  return import('./later-blocks.ts');
}

export async function loadReport() {
  return import('./change-report.ts');
}

export async function loadFigures() {
  const { createFigures } = await import('./figures.ts');
  return createFigures;
}

export async function loadFinds() {
  const { createFinds } = await import('./find.ts');
  return createFinds;
}

export async function loadPractice() {
  const { createPractice } = await import('./practice.ts');
  return createPractice;
}

/** All of them, for the sheets that are opened with the cable out. */
export async function loadAllViews(): Promise<void> {
  await Promise.all([
    loadDoubt(),
    loadBlocks(),
    loadReport(),
    loadFigures(),
    loadFinds(),
    loadPractice(),
  ]);
}
