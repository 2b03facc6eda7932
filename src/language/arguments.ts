import { nearest } from '../units/nearest.ts';
import type { FunctionDeclaration, Parameter } from './functions/declaration.ts';
import { fail, type Problem } from './problem.ts';
import type { CallNode, Expression } from './tree.ts';

/** One parameter with what was given for it; `value` is undefined where its fallback serves. */
export interface Matched {
  readonly parameter: Parameter;
  readonly value: Expression | undefined;
}

/**
 * Matches the arguments of a call, by place first and then by name, with the parameters.
 *
 * @returns one entry a parameter, in their order; the last parameter once for each value where
 *   it may be given several times; or what is wrong with the call
 */
export function matchArguments(
  declaration: FunctionDeclaration,
  call: CallNode,
): readonly Matched[] | Problem {
  const { parameters, several = false, name } = declaration;
  const byPlace = call.arguments.filter((argument) => argument.name === undefined);
  const last = parameters[parameters.length - 1];
  const values = new Map<Parameter, Expression[]>();
  for (const [i, argument] of byPlace.entries()) {
    const parameter = parameters[i] ?? (several ? last : undefined);
    if (parameter === undefined) return wrongCount(declaration, call);
    values.set(parameter, [...(values.get(parameter) ?? []), argument.value]);
  }
  for (const argument of call.arguments) {
    if (argument.name === undefined) continue;
    const parameter = parameters.find((candidate) => candidate.name === argument.name);
    if (parameter === undefined) {
      const near = nearest(
        argument.name,
        parameters.map((candidate) => candidate.name),
      );
      return fail('unknown-argument', argument, { name, argument: argument.name, near });
    }
    if (values.has(parameter))
      return fail('repeated-argument', argument, { name, argument: argument.name });
    values.set(parameter, [argument.value]);
  }
  return collect(declaration, call, values);
}

function collect(
  declaration: FunctionDeclaration,
  call: CallNode,
  values: ReadonlyMap<Parameter, readonly Expression[]>,
): readonly Matched[] | Problem {
  const matched: Matched[] = [];
  for (const parameter of declaration.parameters) {
    const given = values.get(parameter);
    if (given !== undefined) matched.push(...given.map((value) => ({ parameter, value })));
    else if (parameter.fallback !== undefined) matched.push({ parameter, value: undefined });
    else return wrongCount(declaration, call);
  }
  return matched;
}

function wrongCount({ name, parameters, several }: FunctionDeclaration, call: CallNode): Problem {
  const names = parameters.map((p) => (p.fallback === undefined ? p.name : `${p.name} if wanted`));
  const takes = several ? `${names.join(', ')}, one or more` : names.join(', ');
  return fail('argument-count', call, { name, takes, given: call.arguments.length });
}
