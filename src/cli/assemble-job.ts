import { didYouMean, nearest } from '../units/nearest.ts';
import type { Command, Misuse } from './command.ts';
import { hasOption, lastOf, type TypedOption } from './options.ts';

const VERBS = ['check', 'report'] as const;

/** `job check FILE` and `job report FILE --html FILE`. */
export function assembleJob(
  [verb, file, extra]: readonly string[],
  options: readonly TypedOption[],
): Command {
  if (verb === undefined) return misuse('job needs check or report after it');
  if (!VERBS.some((known) => known === verb)) {
    return misuse(
      `job has no "${verb}"${didYouMean(nearest(verb, VERBS)) || '; it has check and report'}`,
    );
  }
  if (file === undefined) return misuse(`job ${verb} needs a job file`);
  if (extra !== undefined) return misuse(`job ${verb} takes one job file; "${extra}" is too many`);
  const html = lastOf(options, 'html');
  const json = hasOption(options, 'json');
  if (verb === 'check') {
    return html === undefined
      ? { command: 'job-check', file, json }
      : misuse('job check has no option --html; job report has');
  }
  if (json) return misuse('job report has no option --json; job check has');
  return html === undefined
    ? misuse('job report needs --html FILE')
    : { command: 'job-report', file, html };
}

function misuse(sentence: string): Misuse {
  return { command: 'misuse', sentence, about: 'job' };
}
