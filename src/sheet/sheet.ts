import type { Token } from 'marked';
import type { Datum } from '../drawing/datum-kinds.ts';
import type { Place, Problem, Span } from '../language/problem.ts';
import type { Expression, NameNode } from '../language/tree.ts';
import type { Unit } from '../units/unit.ts';
import type { Places } from './places.ts';

/** A sheet as read: its narrative and its live blocks in the order of the page. */
export interface Sheet {
  /** File name without folder and ending: `20-gearing`. */
  readonly name: string;
  /** As passed in, for places: `notebooks/20-gearing.md`. */
  readonly file: string;
  readonly source: string;
  /** Line and column of an offset into `source`. */
  readonly places: Places;
  /** The number that the name starts with: its place in the job. */
  readonly number: number | undefined;
  /** Text of the first heading, else the name. */
  readonly title: string;
  readonly parts: readonly Part[];
  /** What was wrong in the reading; the rest of the sheet stands. */
  readonly problems: readonly Problem[];
}

export type Part = Narrative | Block;

/** Markdown between blocks, as tokens of the Markdown reader. */
export interface Narrative {
  readonly kind: 'narrative';
  readonly tokens: readonly Token[];
  readonly line: number;
}

export type Block =
  | GivenBlock
  | FromBlock
  | WorkBlock
  | StackBlock
  | CheckBlock
  | ChartBlock
  | DrawingBlock
  | FindBlock
  | PracticeBlock
  | TableBlock
  | FiguresBlock
  | StepsBlock
  | CautionBlock;

interface BlockBase {
  /** Line of the opening fence, from 1. */
  readonly line: number;
  /** What could not be read; the statements that could are there. */
  readonly problems: readonly Problem[];
}

export interface GivenBlock extends BlockBase {
  readonly kind: 'given';
  readonly statements: readonly GivenStatement[];
}
export interface FromBlock extends BlockBase {
  readonly kind: 'from';
  /** Name of the sheet that the values come from. */
  readonly sheet: string;
  readonly sheetPlace: Place;
  readonly statements: readonly FromStatement[];
}
export interface WorkBlock extends BlockBase {
  readonly kind: 'work';
  readonly statements: readonly WorkStatement[];
}
export interface StackBlock extends BlockBase {
  readonly kind: 'stack';
  /** Undefined where the opening line could not be read. */
  readonly stack: StackStatement | undefined;
}
export interface CheckBlock extends BlockBase {
  readonly kind: 'check';
  /** `check table "Title"`: one line a check in place of a gauge each. */
  readonly layout: 'gauges' | 'table';
  readonly title?: string;
  readonly statements: readonly CheckStatement[];
}
export interface ChartBlock extends BlockBase {
  readonly kind: 'chart';
  readonly chart: ChartStatement | undefined;
}
export interface DrawingBlock extends BlockBase {
  readonly kind: 'drawing';
  readonly drawing: DrawingStatement | undefined;
}
export interface FindBlock extends BlockBase {
  readonly kind: 'find';
  readonly title: string;
  readonly statements: readonly FindStatement[];
}
export interface PracticeBlock extends BlockBase {
  readonly kind: 'practice';
  readonly practice: PracticeStatement | undefined;
}
export interface TableBlock extends BlockBase {
  readonly kind: 'table';
  readonly table: TableStatement | undefined;
}
export interface FiguresBlock extends BlockBase {
  readonly kind: 'figures';
  readonly figures: FiguresStatement | undefined;
}
export interface StepsBlock extends BlockBase {
  readonly kind: 'steps';
  readonly title: string;
  readonly steps: readonly Step[];
}
export interface CautionBlock extends BlockBase {
  readonly kind: 'caution';
  readonly title: string;
  /** Markdown: paragraphs, lists. */
  readonly tokens: readonly Token[];
}

/** What all statements that name a cell share. */
export interface Named extends Span {
  readonly name: string;
  readonly place: Place;
  /** The words in quotes; the name with blanks where there are none. */
  readonly label: string;
  /** `source "…"`: where the figure or formula comes from. */
  readonly source?: string;
}

/** How a value is shown: `as in to 0.001`. */
export interface Display {
  readonly unit?: Unit;
  /** Step of the last digit, in the display unit. */
  readonly resolution?: number;
  /** Denominator where `to 1/64` asks for a fraction. */
  readonly fraction?: number;
}

export interface GivenStatement extends Named {
  readonly value: GivenDefault;
  readonly display: Display;
  readonly range?: { readonly from: Expression; readonly to: Expression };
  /** `how "…"`: instrument, datum, how often. */
  readonly how?: string;
  /** `datum down "…" to "…"`: between what it is taken. */
  readonly datum?: Datum;
}

/** What stands behind the `=` of a given. */
export type GivenDefault =
  /** As a person would type it: `3.212 ± 0.003 in`. */
  | { readonly type: 'entry'; readonly text: string; readonly from: number }
  /** `blank mm`: nothing yet; the unit tells the dimension. `blank list` and `blank mm list` for lists. */
  | { readonly type: 'blank'; readonly unit?: Unit; readonly list: boolean }
  /** `pick "ROW" from TABLE` or `TABLE.COLUMN`. */
  | {
      readonly type: 'pick';
      readonly row: string;
      readonly table: NameNode;
      readonly column?: string;
    }
  | { readonly type: 'text'; readonly value: string };

export interface FromStatement extends Named {
  /** The name that the value has on its own sheet; `name` is what it is called here. */
  readonly origin: string;
  /** True where this sheet gives the value a label of its own. */
  readonly labelled: boolean;
}

export interface WorkStatement extends Named {
  readonly expression: Expression;
  readonly display: Display;
  /** `valid when CONDITION "…"`: where the formula holds, and what is said outside of it. */
  readonly valid?: { readonly condition: Expression; readonly sentence: string };
  /** `positive "…"`, `negative "…"`, `zero "…"`: what the sign of the result tells one to do. */
  readonly signs: Signs;
}

export interface Signs {
  readonly positive?: string;
  readonly negative?: string;
  readonly zero?: string;
}

export interface StackStatement extends Named {
  readonly display: Display;
  readonly terms: readonly StackTerm[];
}

export interface StackTerm extends Span {
  readonly sign: 1 | -1;
  readonly expression: Expression;
  readonly label?: string;
}

export interface CheckStatement extends Named {
  /** The checked value; `name` is its name. */
  readonly subject: NameNode;
  readonly least?: Expression;
  readonly most?: Expression;
  /** `x is y`: what the value must be; then there are no limits. */
  readonly equals?: Expression;
  readonly below?: string;
  readonly above?: string;
}

export interface ChartStatement extends Span {
  readonly title: string;
  readonly place: Place;
  readonly results: readonly NameNode[];
  readonly unit?: Unit;
  /** The given that is swept. */
  readonly over: NameNode;
  readonly range: { readonly from: Expression; readonly to: Expression };
  /** A second value that runs, up the drawing: the chart is then a map with contour lines. */
  readonly against?: {
    readonly over: NameNode;
    readonly range: { readonly from: Expression; readonly to: Expression };
  };
  /** Texts that name the lines of a list result. */
  readonly lines?: NameNode;
  readonly xLabel?: string;
  readonly yLabel?: string;
  readonly marks: readonly ChartMark[];
  readonly limits: readonly ChartLimits[];
}

export interface ChartMark extends Span {
  readonly value: Expression;
  readonly label: string;
  /** Which axis it stands on, where the dimension alone does not tell. */
  readonly axis?: 'x' | 'y';
}

/** A window on the y axis: shaded outside. */
export interface ChartLimits extends Span {
  readonly least: Expression;
  readonly most: Expression;
  readonly label: string;
}

/** `axle_ratio so that top_gear_cruise is 2000 rpm`: a given solved for a target. */
export interface FindStatement extends Span {
  readonly place: Place;
  readonly label: string;
  readonly given: NameNode;
  readonly result: Expression;
  readonly target: Expression;
  /** The given's own range where it is left out. */
  readonly range?: { readonly from: Expression; readonly to: Expression };
  /** `near LIST`: sizes in stock, shown beside the exact answer. */
  readonly near?: Expression;
}

/** A question with fresh numbers, its answer, and the usual mistakes. */
export interface PracticeStatement extends Span {
  readonly title: string;
  readonly place: Place;
  readonly ask: NameNode;
  readonly question: string;
  /** An answer no further off is right. */
  readonly within: Expression;
  /** Which givens get fresh numbers, and from where; where none is named, all that have a range. */
  readonly vary: readonly PracticeVary[];
  readonly mistakes: readonly PracticeMistake[];
}

export interface PracticeVary extends Span {
  readonly name: NameNode;
  readonly range?: { readonly from: Expression; readonly to: Expression };
  readonly resolution?: number;
}

export interface PracticeMistake extends Span {
  /** The answer that the mistake leads to. */
  readonly expression: Expression;
  /** What it tells the apprentice. */
  readonly sentence: string;
}

/** `drawing dial "Readings round the bore"`: a kind of drawing with its slots bound to values. */
export interface DrawingStatement extends Span {
  /** The name of the kind. */
  readonly type: NameNode;
  readonly title: string;
  readonly place: Place;
  readonly slots: readonly DrawingSlotStatement[];
}

export interface DrawingSlotStatement extends Span {
  readonly name: NameNode;
  readonly expression: Expression;
}

/** Named values set out as a table: lists as columns, single values as rows. */
export interface FiguresStatement extends Span {
  readonly title: string;
  readonly place: Place;
  readonly figures: readonly FigureStatement[];
}

export interface FigureStatement extends Span {
  readonly name: NameNode;
  /** Set where the value stands on another sheet. */
  readonly sheet?: FigureSheet;
  /** The value's own label where it is left out. */
  readonly label?: string;
}

export interface FigureSheet extends Span {
  readonly name: string;
}

export interface TableStatement extends Named {
  readonly columns: readonly TableColumn[];
  /** Cells as text, one array a row, in the order of `columns`; row `i` stands on line `lines[i]`. */
  readonly rows: readonly (readonly string[])[];
  readonly lines: readonly number[];
}

export interface TableColumn {
  readonly name: string;
  /** From the header: `thickness (in)`. Undefined for text and plain numbers. */
  readonly unit?: Unit;
}

export interface Step {
  /** Inline Markdown. */
  readonly tokens: readonly Token[];
  readonly text: string;
  /** Stable within the sheet: made from the step's words, so that a tick survives a reordering. */
  readonly id: string;
}
