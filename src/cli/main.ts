import { check } from './check.ts';
import type { Command } from './command.ts';
import { compare } from './compare.ts';
import { find } from './find.ts';
import { correct, help } from './help.ts';
import { checkJob } from './job-check.ts';
import { reportJob } from './job-report.ts';
import { parseArguments } from './parse-arguments.ts';
import { practice } from './practice.ts';
import { solve } from './solve.ts';
import type { ExitCode, Terminal } from './terminal.ts';

/** Does what was typed after `layshaft`. */
export async function run(argv: readonly string[], terminal: Terminal): Promise<ExitCode> {
  return obey(parseArguments(argv), terminal);
}

async function obey(command: Command, terminal: Terminal): Promise<ExitCode> {
  switch (command.command) {
    case 'solve':
      return solve(command, terminal);
    case 'check':
      return check(command, terminal);
    case 'chart':
      // Charts bring the plotting library along, which the other commands do without.
      return (await import('./chart.ts')).chart(command, terminal);
    case 'find':
      return find(command, terminal);
    case 'compare':
      return compare(command, terminal);
    case 'practice':
      return practice(command, terminal);
    case 'publish':
      return (await import('./publish.ts')).publish(command, terminal);
    case 'job-check':
      return checkJob(command, terminal);
    case 'job-report':
      return reportJob(command, terminal);
    case 'help':
      return help(command, terminal);
    case 'misuse':
      return correct(command, terminal);
    default:
      return command satisfies never;
  }
}
