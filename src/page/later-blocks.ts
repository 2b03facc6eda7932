/* Blocks that answer nothing by themselves: they come after the first results. */
export { createChart } from './chart.ts';
export { createDrawing } from './drawing.ts';
export { createSteps } from './steps.ts';
export { createReferenceTable } from './table.ts';
