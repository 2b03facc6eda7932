import type { FigureFormat, TableFormat } from '../export/bundle-contents.ts';

/** One `--given NAME=ENTRY` as typed. */
export interface GivenArgument {
  readonly name: string;
  readonly entry: string;
}

export interface SolveCommand {
  readonly command: 'solve';
  readonly sheet: string;
  readonly givens: readonly GivenArgument[];
  /** A job file, whose entries come before those that are named. */
  readonly job?: string;
  readonly json: boolean;
}

export interface CheckCommand {
  readonly command: 'check';
  readonly sheets: readonly string[];
  readonly json: boolean;
}

export interface ChartCommand {
  readonly command: 'chart';
  readonly sheet: string;
  readonly title: string;
  readonly givens: readonly GivenArgument[];
  /** Files to write; `-` is standard output. At least one of the two is there. */
  readonly svg?: string;
  readonly csv?: string;
}

export interface FindCommand {
  readonly command: 'find';
  readonly sheet: string;
  readonly result: string;
  /** What the result should be, as typed. */
  readonly target: string;
  /** The given that is looked for. */
  readonly by: string;
  /** Which number of a list: what the sheet calls it, or its place counted from 1. */
  readonly element?: string;
  readonly from?: string;
  readonly to?: string;
  readonly givens: readonly GivenArgument[];
  readonly json: boolean;
}

/** One `--with "NAME: GIVEN=ENTRY, …"` as typed. */
export interface WithArgument {
  readonly name: string;
  readonly differences: readonly GivenArgument[];
}

export interface CompareCommand {
  readonly command: 'compare';
  readonly sheet: string;
  readonly variants: readonly WithArgument[];
  /** Names of results; all of the sheet where none is named. */
  readonly results: readonly string[];
  /** A job file, with proposals of its own. */
  readonly job?: string;
  readonly givens: readonly GivenArgument[];
  readonly json: boolean;
}

export interface PracticeCommand {
  readonly command: 'practice';
  readonly sheet: string;
  readonly seed: string;
  readonly count: number;
  readonly answers: boolean;
  readonly json: boolean;
}

export interface PublishCommand {
  readonly command: 'publish';
  /** All of the job's sheets where none is named. */
  readonly sheets: readonly string[];
  readonly zip: string;
  readonly job?: string;
  /** Millimetres. */
  readonly width: number;
  readonly dotsPerInch: number;
  readonly colour: 'colour' | 'grey';
  readonly lettering: 'outlines' | 'font';
  readonly figureFormats: readonly FigureFormat[];
  readonly tableFormats: readonly TableFormat[];
}

export interface JobCheckCommand {
  readonly command: 'job-check';
  readonly file: string;
  readonly json: boolean;
}

export interface JobReportCommand {
  readonly command: 'job-report';
  readonly file: string;
  /** File to write; `-` is standard output. */
  readonly html: string;
}

export interface HelpCommand {
  readonly command: 'help';
  /** The command that help is wanted for. */
  readonly about?: string;
}

/** Wrong use: a sentence that says what is wrong and a line on what to type. */
export interface Misuse {
  readonly command: 'misuse';
  readonly sentence: string;
  readonly about?: string;
}

export type Command =
  | SolveCommand
  | CheckCommand
  | ChartCommand
  | FindCommand
  | CompareCommand
  | PracticeCommand
  | PublishCommand
  | JobCheckCommand
  | JobReportCommand
  | HelpCommand
  | Misuse;
