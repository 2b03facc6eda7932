/** How a sheet of the job stands. */
export type Stop =
  | { readonly state: 'not-started' }
  | { readonly state: 'in-work'; readonly stepsLeft: number; readonly unknown: number }
  | { readonly state: 'passes'; readonly checks: number }
  | { readonly state: 'fails'; readonly fails: number };

export interface Tally {
  readonly started: boolean;
  readonly passes: number;
  readonly fails: number;
  /** Checks that cannot be judged yet. */
  readonly unknown: number;
  readonly stepsLeft: number;
}

/** A check that fails shows even on a sheet that nobody has opened: what was carried in made it fail. */
export function inferStop(tally: Tally): Stop {
  if (tally.fails > 0) return { state: 'fails', fails: tally.fails };
  if (!tally.started) return { state: 'not-started' };
  if (tally.stepsLeft > 0 || tally.unknown > 0) {
    return { state: 'in-work', stepsLeft: tally.stepsLeft, unknown: tally.unknown };
  }
  return { state: 'passes', checks: tally.passes };
}

/** The state in words, for those who do not see the mark. */
export function nameStop(stop: Stop): string {
  switch (stop.state) {
    case 'not-started':
      return 'not started';
    case 'in-work':
      return `in work${stop.stepsLeft === 0 ? '' : `, ${count(stop.stepsLeft, 'step')} left`}`;
    case 'passes':
      return stop.checks === 0 ? 'done' : 'all checks pass';
    case 'fails':
      return stop.fails === 1 ? 'a check fails' : `${stop.fails} checks fail`;
    default:
      return stop satisfies never;
  }
}

function count(number: number, noun: string): string {
  return number === 1 ? `1 ${noun}` : `${number} ${noun}s`;
}
