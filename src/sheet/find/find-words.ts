import type { Found } from './find-given.ts';
import type { TriedRow } from './try-rows.ts';

export interface FindShow {
  /** A value of the given as the page shows it. */
  given(value: number): string;
  /** A value of the result. */
  result(value: number): string;
  /** What is searched for, as a name: "axle ratio". */
  readonly givenName: string;
  readonly resultName: string;
  /** What the result is to equal, where that is no figure but a value of its own: "road load". */
  readonly targetName?: string;
}

/** The answer to a question asked backwards, in one sentence. */
export function describeFound(found: Found, show: FindShow): string {
  const { target, moves, solutions, closest, depends, from, to } = found;
  const range = `between ${show.given(from)} and ${show.given(to)}`;
  if (target === undefined && !moves) return 'There is no target yet.';
  if (closest === undefined) return `${capital(show.resultName)} has no value anywhere ${range}.`;
  if (!depends) {
    return `${capital(show.resultName)} does not depend on ${show.givenName}: it is ${show.result(closest.result)} throughout.`;
  }
  const aim = moves ? `equal to ${show.targetName ?? 'the target'}` : show.result(target!);
  const wanted = `${show.resultName} ${aim}`;
  if (solutions.length === 0) {
    const against = moves ? ` against ${show.result(closest.target)}` : '';
    return `Nothing ${range} gives ${wanted}; nearest is ${show.given(closest.given)}, which gives ${show.result(closest.result)}${against}.`;
  }
  const values = solutions.map(({ from: low, to: high }) =>
    low === high ? show.given(low) : `anything from ${show.given(low)} to ${show.given(high)}`,
  );
  const many = values.length > 1 ? ` (${values.length} answers)` : '';
  return `${capital(show.givenName)} ${join(values)} gives ${wanted}${many}.`;
}

/** Which row of a table comes nearest to a target; the rows with the nearest first. */
export function describeRows([best]: readonly TriedRow[], target: number, show: FindShow): string {
  if (best === undefined || !Number.isFinite(best.result)) {
    return `No row of its table gives ${show.resultName} a value.`;
  }
  const wanted = `${show.resultName} ${show.result(target)}`;
  return `Of the table, ${best.row} comes nearest to ${wanted}: it gives ${show.result(best.result)}.`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function join(values: readonly string[]): string {
  const last = values.at(-1)!;
  return values.length === 1 ? last : `${values.slice(0, -1).join(', ')} or ${last}`;
}
