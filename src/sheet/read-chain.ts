import type { ChainData, ChainTerm } from '../drawing/chain-data.ts';
import { printText } from '../language/print-text.ts';
import type { Cell, Formula } from './cell.ts';
import type { StackTerm } from './sheet.ts';
import { showValue } from './show.ts';
import type { Standing } from './standing.ts';

export type StackCell = Cell & { readonly role: 'stack' };
type Values = Pick<Standing, 'system' | 'workOut'>;

/** A stack as it is drawn: its terms and its sum as they stand. */
export function readChain(cell: StackCell, values: Values): ChainData {
  const { statement, formula, terms } = cell;
  return {
    title: cell.label,
    terms: statement.terms.map((term, i) => readTerm(cell, term, terms[i], values)),
    total: {
      label: statement.name.replaceAll('_', ' '),
      ...readNumber(cell, formula, values),
    },
  };
}

function readTerm(
  cell: StackCell,
  term: StackTerm,
  formula: Formula | undefined,
  values: Values,
): ChainTerm {
  return { sign: term.sign, label: nameTerm(term), ...readNumber(cell, formula, values) };
}

/** On the drawing there is room for a name, not for how to measure it. */
function nameTerm({ label, expression }: StackTerm): string {
  return label ?? printText(expression).replaceAll('_', ' ');
}

/** In the unit of the sum, so that all dimensions of the chain are to one scale. */
function readNumber(
  cell: StackCell,
  formula: Formula | undefined,
  { system, workOut }: Values,
): { value: number; text: string } {
  const value = formula === undefined ? Number.NaN : (workOut(formula) as number);
  if (!Number.isFinite(value)) return { value: Number.NaN, text: '?' };
  return { value, text: showValue(value, formula!.kind, cell.display, system()).text };
}
