import { didYouMean, nearest } from '../units/nearest.ts';
import type { Command, GivenArgument, HelpCommand, Misuse } from './command.ts';
import {
  ALLOWED,
  findWrongOption,
  hasOption,
  lastOf,
  splitArguments,
  type TypedOption,
} from './options.ts';

const HELP: HelpCommand = { command: 'help' };

/** What was typed after `layshaft`, understood or refused. */
export function parseArguments(argv: readonly string[]): Command {
  const typed = splitArguments(argv);
  const [name, ...words] = typed.words;
  if (typed.options.some((option) => option.name === 'help')) return askForHelp(name);
  if (name === undefined) return typed.options.length > 0 ? refuseBare(typed.options[0]!) : HELP;
  if (!Object.hasOwn(ALLOWED, name)) return refuseCommand(name);
  const wrong = findWrongOption(name, typed.options);
  if (wrong !== undefined) return misuse(name, wrong);
  return assemble(name, words, typed.options);
}

function askForHelp(about: string | undefined): Command {
  if (about === undefined) return HELP;
  return Object.hasOwn(ALLOWED, about) ? { command: 'help', about } : refuseCommand(about);
}

function refuseBare(option: TypedOption): Misuse {
  return { command: 'misuse', sentence: `${option.written} needs a command before it` };
}

function refuseCommand(name: string): Misuse {
  const near = didYouMean(nearest(name, Object.keys(ALLOWED)));
  return { command: 'misuse', sentence: `there is no command "${name}"${near}` };
}

function assemble(
  name: string,
  words: readonly string[],
  options: readonly TypedOption[],
): Command {
  switch (name) {
    case 'solve':
      return assembleSolve(words, options);
    case 'check':
      return assembleCheck(words, options);
    case 'chart':
      return assembleChart(words, options);
    default:
      return askForHelp(words[0]);
  }
}

function assembleSolve(words: readonly string[], options: readonly TypedOption[]): Command {
  const [sheet, extra] = words;
  if (sheet === undefined) return misuse('solve', 'solve needs the name of a sheet');
  if (extra !== undefined) return misuse('solve', refuseExtra('solve', 'one sheet', extra));
  const givens = parseGivens('solve', options);
  if ('command' in givens) return givens;
  return { command: 'solve', sheet, givens, json: hasOption(options, 'json') };
}

function assembleCheck(words: readonly string[], options: readonly TypedOption[]): Command {
  if (words.length === 0) return misuse('check', 'check needs the name of at least one sheet');
  return { command: 'check', sheets: words, json: hasOption(options, 'json') };
}

function assembleChart(words: readonly string[], options: readonly TypedOption[]): Command {
  const [sheet, title, extra] = words;
  if (sheet === undefined) return misuse('chart', 'chart needs the name of a sheet');
  if (title === undefined) return misuse('chart', 'chart needs the title of a chart in quotes');
  if (extra !== undefined) {
    const why = refuseExtra('chart', 'one sheet and one title', extra);
    return misuse('chart', `${why}; put a title with blanks in quotes`);
  }
  const svg = lastOf(options, 'svg');
  const csv = lastOf(options, 'csv');
  if (svg === undefined && csv === undefined) {
    return misuse('chart', 'chart needs --svg FILE or --csv FILE');
  }
  const givens = parseGivens('chart', options);
  if ('command' in givens) return givens;
  const files = { ...(svg !== undefined && { svg }), ...(csv !== undefined && { csv }) };
  return { command: 'chart', sheet, title, givens, ...files };
}

function misuse(about: string, sentence: string): Misuse {
  return { command: 'misuse', sentence, about };
}

function refuseExtra(command: string, takes: string, extra: string): string {
  return `${command} takes ${takes}; "${extra}" is too many`;
}

/** `NAME=ENTRY`, split at the first `=`; an empty entry leaves the given blank. */
function parseGivens(
  command: string,
  options: readonly TypedOption[],
): readonly GivenArgument[] | Misuse {
  const typed = options.filter(({ name }) => name === 'given').map(({ value }) => value ?? '');
  const bare = typed.find((text) => !/^\s*[^\s=]+\s*=/.test(text));
  if (bare !== undefined) {
    return misuse(command, `--given needs NAME=ENTRY, such as "axle_ratio=3.73", not "${bare}"`);
  }
  return typed.map((text) => {
    const at = text.indexOf('=');
    return { name: text.slice(0, at).trim(), entry: text.slice(at + 1).trim() };
  });
}
