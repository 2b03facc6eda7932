import type { DrawingPlan, DrawingSlot } from '../drawing/declaration.ts';
import { findPlan, PLANS } from '../drawing/drawing-plans.ts';
import { type Kind, nameKind } from '../language/kind.ts';
import { equalDimensions, NONE, nameDimension } from '../units/dimension.ts';
import { nearest } from '../units/nearest.ts';
import type { Drawing, DrawnSlot, Formula, LinkedDrawing } from './cell.ts';
import { inferDisplayUnit } from './display-unit.ts';
import { attemptLink, LinkFault, linkFault } from './link-fault.ts';
import { type LinkContext, linkFormula } from './link-formula.ts';
import type { Display, DrawingSlotStatement, DrawingStatement, Sheet } from './sheet.ts';

/** Links a drawing: its kind, and each slot with a value of the right kind and dimension. */
export function linkDrawing(
  statement: DrawingStatement,
  sheet: Sheet,
  context: LinkContext,
): Drawing {
  const base = { sheet: sheet.name, statement };
  return { ...base, ...attemptLink(sheet, () => createLinked(statement, sheet, context)) };
}

function createLinked(
  { type, slots: bound }: DrawingStatement,
  sheet: Sheet,
  context: LinkContext,
): LinkedDrawing {
  const plan = findPlan(type.name);
  if (plan === undefined) {
    const near = nearest(
      type.name,
      Object.values(PLANS).map(({ name }) => name),
    );
    throw linkFault('unknown-drawing', type, { name: type.name, near });
  }
  const slots: DrawnSlot[] = [];
  for (const slot of bound) slots.push(linkSlot(slot, plan, slots, sheet, context));
  const missing = plan.slots.filter(
    ({ name, optional }) => !optional && !slots.some(({ slot }) => slot.name === name),
  );
  if (missing.length === 0) return { plan, slots };
  const names = missing.map(({ name }) => name).join(', ');
  throw linkFault('missing-slot', type, { drawing: plan.name, slots: names });
}

function linkSlot(
  { name, expression }: DrawingSlotStatement,
  plan: DrawingPlan,
  taken: readonly DrawnSlot[],
  sheet: Sheet,
  context: LinkContext,
): DrawnSlot {
  const slot = plan.slots.find((candidate) => candidate.name === name.name);
  if (slot === undefined) {
    const near = nearest(
      name.name,
      plan.slots.map((candidate) => candidate.name),
    );
    throw linkFault('unknown-slot', name, { drawing: plan.name, slot: name.name, near });
  }
  if (taken.some((other) => other.slot === slot)) {
    throw linkFault('repeated-slot', name, { drawing: plan.name, slot: slot.name });
  }
  const linked = linkFormula(expression, sheet, slot.name, context);
  if ('problems' in linked) throw new LinkFault(linked.problems[0]!);
  const misfit = findMisfit(slot, linked.formula.kind);
  if (misfit !== undefined) {
    const where = `${slot.name} of drawing ${plan.name}`;
    throw linkFault('wrong-kind', expression, {
      where,
      expected: misfit,
      found: nameKind(linked.formula.kind),
    });
  }
  return { slot, formula: linked.formula, display: displayOf(linked.formula, sheet, context) };
}

/** What would have fitted, where the kind does not. */
function findMisfit({ shape, dimension = NONE }: DrawingSlot, kind: Kind): string | undefined {
  const isNumeric = shape === 'quantity' || shape === 'list';
  const fits =
    kind.type === shape && (!('dimension' in kind) || equalDimensions(kind.dimension, dimension));
  if (fits) return undefined;
  const of = isNumeric ? ` (${nameDimension(dimension)})` : '';
  return (
    { quantity: 'a quantity', list: 'a list', text: 'a text', texts: 'a list of texts' }[shape] + of
  );
}

/** Shown as the named value is, else in a unit met in the formula. */
function displayOf({ tree, kind }: Formula, sheet: Sheet, { drafts, cells }: LinkContext): Display {
  const own = drafts.names.get(sheet.name)!;
  const cell = tree.type === 'name' ? cells[own.get(tree.name)!] : undefined;
  if (cell !== undefined) return cell.display;
  const unit = 'dimension' in kind ? inferDisplayUnit(kind.dimension, []) : undefined;
  return unit === undefined ? {} : { unit };
}
