import { expect, test } from 'vitest';
import { inferStop, nameStop, type Tally } from '../../src/page/stop.ts';

const untouched: Tally = { started: false, passes: 0, fails: 0, unknown: 0, stepsLeft: 0 };

test.each<[string, Partial<Tally>, string, string]>([
  ['a sheet that nobody touched', { passes: 2, stepsLeft: 3 }, 'not-started', 'not started'],
  ['a sheet with steps left', { started: true, stepsLeft: 3 }, 'in-work', 'in work, 3 steps left'],
  [
    'a sheet with one step left',
    { started: true, stepsLeft: 1 },
    'in-work',
    'in work, 1 step left',
  ],
  ['a sheet with a check that waits', { started: true, unknown: 1 }, 'in-work', 'in work'],
  ['a sheet whose checks pass', { started: true, passes: 2 }, 'passes', 'all checks pass'],
  ['a finished sheet without checks', { started: true }, 'passes', 'done'],
  ['a sheet with a failing check', { started: true, fails: 1 }, 'fails', 'a check fails'],
  ['several failing checks', { started: true, fails: 2 }, 'fails', '2 checks fail'],
  ['a failing check on an untouched sheet', { fails: 1 }, 'fails', 'a check fails'],
])('%s is told', (_, tally, state, words) => {
  const stop = inferStop({ ...untouched, ...tally });
  expect(stop.state).toBe(state);
  expect(nameStop(stop)).toBe(words);
});
