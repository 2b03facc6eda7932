import { parseArgs } from 'node:util';
import { didYouMean, nearest } from '../units/nearest.ts';

const OPTIONS = {
  given: { type: 'string', multiple: true },
  json: { type: 'boolean' },
  svg: { type: 'string' },
  csv: { type: 'string' },
  by: { type: 'string' },
  element: { type: 'string' },
  from: { type: 'string' },
  to: { type: 'string' },
  with: { type: 'string', multiple: true },
  results: { type: 'string' },
  job: { type: 'string' },
  seed: { type: 'string' },
  count: { type: 'string' },
  zip: { type: 'string' },
  html: { type: 'string' },
  width: { type: 'string' },
  dpi: { type: 'string' },
  grey: { type: 'boolean' },
  lettering: { type: 'string' },
  figures: { type: 'string' },
  tables: { type: 'string' },
  'no-answers': { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
} as const;

export type OptionName = keyof typeof OPTIONS;

/** Options that each command knows, besides `--help`. */
export const ALLOWED: Readonly<Record<string, readonly OptionName[]>> = {
  solve: ['given', 'job', 'json'],
  check: ['json'],
  chart: ['given', 'svg', 'csv'],
  find: ['by', 'element', 'from', 'to', 'given', 'json'],
  compare: ['with', 'results', 'job', 'given', 'json'],
  practice: ['seed', 'count', 'no-answers', 'json'],
  publish: ['zip', 'job', 'width', 'dpi', 'grey', 'lettering', 'figures', 'tables'],
  job: ['html', 'json'],
  help: [],
};

/** What was typed, in words and options, not yet understood. */
export interface Typed {
  readonly words: readonly string[];
  readonly options: readonly TypedOption[];
}

export interface TypedOption {
  readonly name: string;
  /** With its dashes, as typed. */
  readonly written: string;
  readonly value: string | undefined;
}

/** Takes the line apart without judging it. */
export function splitArguments(argv: readonly string[]): Typed {
  const { tokens } = parseArgs({
    args: [...argv],
    options: OPTIONS,
    allowPositionals: true,
    strict: false,
    tokens: true,
  });
  const words = tokens.flatMap((token) => (token.kind === 'positional' ? [token.value] : []));
  const options = tokens.flatMap((token) =>
    token.kind === 'option'
      ? [{ name: token.name, written: token.rawName, value: token.value }]
      : [],
  );
  return { words, options };
}

/** A sentence where a command got an option that it does not know or cannot read. */
export function findWrongOption(
  command: string,
  options: readonly TypedOption[],
): string | undefined {
  const allowed = ALLOWED[command]!;
  for (const { name, written, value } of options) {
    if (!allowed.includes(name as OptionName)) {
      const near = didYouMean(nearest(name, allowed).map((option) => `--${option}`));
      return `${command} has no option ${written}${near}`;
    }
    const kind = OPTIONS[name as OptionName].type;
    if (kind === 'string' && (value === undefined || value === '')) {
      return `${written} needs a value after it`;
    }
    if (kind === 'boolean' && value !== undefined) return `${written} takes no value`;
  }
  return undefined;
}

export function hasOption(options: readonly TypedOption[], wanted: OptionName): boolean {
  return options.some(({ name }) => name === wanted);
}

/** The last value of an option that is meant to stand once. */
export function lastOf(options: readonly TypedOption[], wanted: OptionName): string | undefined {
  return options.findLast(({ name }) => name === wanted)?.value;
}
