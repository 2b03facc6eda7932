import { didYouMean, nearest } from '../units/nearest.ts';
import { assembleJob } from './assemble-job.ts';
import { assemblePublish } from './assemble-publish.ts';
import type { Command, GivenArgument, HelpCommand, Misuse, WithArgument } from './command.ts';
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
    case 'find':
      return assembleFind(words, options);
    case 'compare':
      return assembleCompare(words, options);
    case 'practice':
      return assemblePractice(words, options);
    case 'publish':
      return assemblePublish(words, options);
    case 'job':
      return assembleJob(words, options);
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
  const job = pick(options, 'job');
  return { command: 'solve', sheet, givens, ...job, json: hasOption(options, 'json') };
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

function assembleFind(words: readonly string[], options: readonly TypedOption[]): Command {
  const [sheet, wanted, extra] = words;
  if (sheet === undefined) return misuse('find', 'find needs the name of a sheet');
  const question = wanted === undefined ? undefined : splitGiven(wanted);
  if (question === undefined) {
    const found = wanted === undefined ? '' : `, not "${wanted}"`;
    return misuse('find', `find needs RESULT=TARGET, such as "top_gear_cruise=2000 rpm"${found}`);
  }
  if (extra !== undefined) {
    return misuse('find', refuseExtra('find', 'one sheet and one RESULT=TARGET', extra));
  }
  const by = lastOf(options, 'by');
  if (by === undefined) return misuse('find', 'find needs --by GIVEN: what is to be found');
  const givens = parseGivens('find', options);
  if ('command' in givens) return givens;
  return {
    command: 'find',
    sheet,
    result: question.name,
    target: question.entry,
    by,
    ...pick(options, 'element'),
    ...pick(options, 'from'),
    ...pick(options, 'to'),
    givens,
    json: hasOption(options, 'json'),
  };
}

function assembleCompare(words: readonly string[], options: readonly TypedOption[]): Command {
  const [sheet, extra] = words;
  if (sheet === undefined) return misuse('compare', 'compare needs the name of a sheet');
  if (extra !== undefined) return misuse('compare', refuseExtra('compare', 'one sheet', extra));
  const typed = options.filter(({ name }) => name === 'with').map(({ value }) => value ?? '');
  if (typed.length === 0 && !hasOption(options, 'job')) {
    return misuse(
      'compare',
      'compare needs at least one --with "NAME: GIVEN=ENTRY", or --job FILE',
    );
  }
  const variants = typed.map(parseWith);
  const bad = typed.find((_, i) => variants[i] === undefined);
  if (bad !== undefined) {
    return misuse(
      'compare',
      `--with needs "NAME: GIVEN=ENTRY, …", such as "Short axle: axle_ratio=3.73", not "${bad}"`,
    );
  }
  const givens = parseGivens('compare', options);
  if ('command' in givens) return givens;
  const results = (lastOf(options, 'results') ?? '').split(',').map((name) => name.trim());
  return {
    command: 'compare',
    sheet,
    variants: variants.filter((variant) => variant !== undefined),
    results: results.filter((name) => name !== ''),
    ...pick(options, 'job'),
    givens,
    json: hasOption(options, 'json'),
  };
}

/** `NAME: GIVEN=ENTRY, …`; a comma inside an entry is one that no name and `=` follow. */
function parseWith(text: string): WithArgument | undefined {
  const match = /^([^:=]+):(.*)$/s.exec(text);
  if (match === null) return undefined;
  const parts = match[2]!.split(/,\s*(?=[a-z][a-z0-9_]*\s*=)/).filter((part) => part.trim() !== '');
  const differences = parts.map(splitGiven);
  if (differences.length === 0 || differences.includes(undefined)) return undefined;
  return { name: match[1]!.trim(), differences: differences as readonly GivenArgument[] };
}

const MOST_PROBLEMS = 200;

function assemblePractice(words: readonly string[], options: readonly TypedOption[]): Command {
  const [sheet, extra] = words;
  if (sheet === undefined) return misuse('practice', 'practice needs the name of a sheet');
  if (extra !== undefined) return misuse('practice', refuseExtra('practice', 'one sheet', extra));
  const seed = lastOf(options, 'seed');
  if (seed === undefined) return misuse('practice', 'practice needs --seed N: a number or a word');
  const typed = lastOf(options, 'count') ?? '6';
  const count = Number(typed);
  if (!Number.isInteger(count) || count < 1 || count > MOST_PROBLEMS) {
    return misuse(
      'practice',
      `--count needs a whole number from 1 to ${MOST_PROBLEMS}, not "${typed}"`,
    );
  }
  const answers = !hasOption(options, 'no-answers');
  return { command: 'practice', sheet, seed, count, answers, json: hasOption(options, 'json') };
}

function pick<N extends 'element' | 'from' | 'to' | 'job'>(
  options: readonly TypedOption[],
  name: N,
): { readonly [K in N]?: string } {
  const value = lastOf(options, name);
  return (value === undefined ? {} : { [name]: value }) as { readonly [K in N]?: string };
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
  const givens = typed.map(splitGiven);
  const bare = typed.find((_, i) => givens[i] === undefined);
  if (bare !== undefined) {
    return misuse(command, `--given needs NAME=ENTRY, such as "axle_ratio=3.73", not "${bare}"`);
  }
  return givens as readonly GivenArgument[];
}

function splitGiven(text: string): GivenArgument | undefined {
  if (!/^\s*[^\s=]+\s*=/.test(text)) return undefined;
  const at = text.indexOf('=');
  return { name: text.slice(0, at).trim(), entry: text.slice(at + 1).trim() };
}
