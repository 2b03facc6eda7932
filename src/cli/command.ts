/** One `--given NAME=ENTRY` as typed. */
export interface GivenArgument {
  readonly name: string;
  readonly entry: string;
}

export interface SolveCommand {
  readonly command: 'solve';
  readonly sheet: string;
  readonly givens: readonly GivenArgument[];
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

export type Command = SolveCommand | CheckCommand | ChartCommand | HelpCommand | Misuse;
