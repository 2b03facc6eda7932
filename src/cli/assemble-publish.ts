import type { FigureFormat, TableFormat } from '../export/bundle-contents.ts';
import { WIDTH_LIMITS } from '../export/print-size.ts';
import type { Misuse, PublishCommand } from './command.ts';
import { hasOption, lastOf, type OptionName, type TypedOption } from './options.ts';

const FIGURES: readonly FigureFormat[] = ['svg', 'png', 'csv'];
const TABLES: readonly TableFormat[] = ['md', 'html', 'csv'];
const LETTERING = ['outlines', 'font'] as const;
const DENSITY_LIMITS = [72, 1200] as const;

/** What was typed after `publish`, understood or refused. */
export function assemblePublish(
  words: readonly string[],
  options: readonly TypedOption[],
): PublishCommand | Misuse {
  const zip = lastOf(options, 'zip');
  if (zip === undefined) return misuse('publish needs --zip FILE');
  const width = readNumber(options, 'width', WIDTH_LIMITS, 140);
  const dotsPerInch = readNumber(options, 'dpi', DENSITY_LIMITS, 300);
  const lettering = readChoices(options, 'lettering', LETTERING, ['outlines']);
  const figureFormats = readChoices(options, 'figures', FIGURES, ['svg', 'png']);
  const tableFormats = readChoices(options, 'tables', TABLES, ['md', 'csv']);
  const refused = [width, dotsPerInch, lettering, figureFormats, tableFormats].find(isMisuse);
  if (refused !== undefined) return refused;
  const job = lastOf(options, 'job');
  return {
    command: 'publish',
    sheets: words,
    zip,
    ...(job === undefined ? {} : { job }),
    width: width as number,
    dotsPerInch: dotsPerInch as number,
    colour: hasOption(options, 'grey') ? 'grey' : 'colour',
    lettering: (lettering as readonly (typeof LETTERING)[number][])[0]!,
    figureFormats: figureFormats as readonly FigureFormat[],
    tableFormats: tableFormats as readonly TableFormat[],
  };
}

function readNumber(
  options: readonly TypedOption[],
  name: OptionName,
  [least, most]: readonly [number, number],
  otherwise: number,
): number | Misuse {
  const typed = lastOf(options, name);
  if (typed === undefined) return otherwise;
  const number = Number(typed);
  if (number >= least && number <= most) return number;
  return misuse(`--${name} needs a number from ${least} to ${most}, not "${typed}"`);
}

function readChoices<T extends string>(
  options: readonly TypedOption[],
  name: OptionName,
  known: readonly T[],
  otherwise: readonly T[],
): readonly T[] | Misuse {
  const typed = lastOf(options, name);
  if (typed === undefined) return otherwise;
  const words = typed.split(',').map((word) => word.trim().toLowerCase());
  const odd = words.find((word) => !(known as readonly string[]).includes(word));
  if (odd === undefined) return known.filter((each) => words.includes(each));
  return misuse(`--${name} knows ${known.join(', ')}, not "${odd}"`);
}

function isMisuse(value: unknown): value is Misuse {
  return typeof value === 'object' && value !== null && 'sentence' in value;
}

function misuse(sentence: string): Misuse {
  return { command: 'misuse', sentence, about: 'publish' };
}
