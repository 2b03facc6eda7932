import type { FunctionDeclaration } from '../../src/language/functions/declaration.ts';
import type { Value } from '../../src/language/kind.ts';

/** A function of the trade worked on SI values; throws where it has no value for them. */
export function runFunction(declaration: FunctionDeclaration, ...values: Value[]): Value {
  const refusal = refusalOf(declaration, ...values);
  if (refusal !== undefined) throw new Error(refusal);
  const run = declaration.work.run as (...values: Value[]) => Value;
  return run(...fillIn(declaration, values));
}

/** Why a function has no value for these. */
export function refusalOf(
  declaration: FunctionDeclaration,
  ...values: Value[]
): string | undefined {
  const refuse = declaration.work.refuse as (...values: Value[]) => string | undefined;
  return refuse(...fillIn(declaration, values));
}

/** What is left out at the end stands for what the declaration falls back on. */
function fillIn({ parameters }: FunctionDeclaration, values: readonly Value[]): Value[] {
  const rest = parameters.slice(values.length).map(({ fallback }) => fallback!);
  return [...values, ...rest];
}
