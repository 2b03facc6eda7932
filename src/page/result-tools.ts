import type { Cell } from '../sheet/cell.ts';
import type { Desk } from './desk.ts';
import { h } from './element.ts';
import { createFunctionNotes } from './function-notes.ts';
import { createLazy } from './lazy.ts';
import type { View } from './view.ts';

/**
 * What can be done with a result besides reading it: go through its working line by line, ask it
 * backwards, and ask where its formulas come from. Each is loaded when it is opened, and works nothing
 * while it is shut.
 */
export function createResultTools(desk: Desk, cell: Cell): View {
  const tools = [createLazy('Step by step', loadSteps)];
  const isNumbers = cell.kind?.type === 'quantity' || cell.kind?.type === 'list';
  if (isNumbers) tools.push(createLazy('Ask backwards', loadAsk));

  const formula = cell.role === 'work' || cell.role === 'stack' ? cell.formula : undefined;
  const notes = formula === undefined ? [] : createFunctionNotes(desk, formula.tree);

  if (cell.role === 'stack') tools.push(createLazy('Tolerances added up', loadTable));

  async function loadTable(): Promise<View> {
    return (await import('./stack-table.ts')).createStackTable(desk, cell);
  }

  async function loadSteps(): Promise<View> {
    return (await import('./step-through.ts')).createStepThrough(desk, cell);
  }

  async function loadAsk(): Promise<View> {
    return (await import('./ask-backwards.ts')).createAsk(desk, cell);
  }

  return {
    element: h('div', { class: 'result-tools' }, ...tools.map(({ element }) => element), ...notes),
    cells: [cell.index],
    refresh: () => tools.forEach((tool) => void tool.refresh()),
  };
}
