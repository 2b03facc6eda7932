import type { DrawingPlan, DrawingSlot } from '../drawing/declaration.ts';
import type { Code } from '../language/code.ts';
import type { Kind, Row } from '../language/kind.ts';
import type { Place, Problem } from '../language/problem.ts';
import type { Expression } from '../language/tree.ts';
import type { Unit } from '../units/unit.ts';
import type {
  ChartStatement,
  CheckStatement,
  Display,
  DrawingStatement,
  FiguresStatement,
  FindStatement,
  FromStatement,
  GivenStatement,
  PracticeStatement,
  StackStatement,
  TableStatement,
  WorkStatement,
} from './sheet.ts';

/** One named value of a sheet, checked and ready to work. */
export type Cell = CellBase & CellRole;

interface CellBase {
  /** Place in the book and in the memory. */
  readonly index: number;
  /** `sheet/name`, the same from one opening to the next. */
  readonly id: string;
  readonly sheet: string;
  readonly name: string;
  readonly label: string;
  readonly place: Place;
  /** Undefined where the cell is itself at fault: see `problem`. */
  readonly kind: Kind | undefined;
  readonly display: Display;
  /** Cells that this one reads directly. */
  readonly inputs: readonly number[];
  readonly source?: string;
  /** Why the cell can never be worked. */
  readonly problem?: Problem;
}

export type CellRole =
  | {
      readonly role: 'given';
      readonly statement: GivenStatement;
      /** Bounds of the sensible range, SI. */
      readonly range?: { readonly from: number; readonly to: number };
      /** The cell of the table that the given picks from. */
      readonly table?: number;
    }
  | {
      readonly role: 'from';
      readonly statement: FromStatement;
      readonly origin: number | undefined;
    }
  | {
      readonly role: 'work';
      readonly statement: WorkStatement;
      readonly formula?: Formula;
      /** Where the formula holds. */
      readonly valid?: Formula;
    }
  | {
      readonly role: 'stack';
      readonly statement: StackStatement;
      /** The whole sum. */
      readonly formula?: Formula;
      /** One a term, without its sign. */
      readonly terms: readonly Formula[];
    }
  | { readonly role: 'table'; readonly statement: TableStatement; readonly rows: readonly Row[] };

/** A checked and compiled formula with what is needed to tell why it has no value. */
export interface Formula {
  readonly tree: Expression;
  readonly kind: Kind;
  readonly kinds: ReadonlyMap<Expression, Kind>;
  readonly code: Code;
}

export type GivenCell = Cell & { readonly role: 'given' };

/** An acceptance window on one value. */
export interface Check {
  readonly index: number;
  readonly sheet: string;
  readonly statement: CheckStatement;
  /** The checked cell. */
  readonly subject: number | undefined;
  readonly least?: Formula;
  readonly most?: Formula;
  /** What the value must be. */
  readonly equals?: Formula;
  /** Cells that the verdict depends on directly. */
  readonly inputs: readonly number[];
  readonly problem?: Problem;
}

/** A chart with its names found; either `linked` or `problem` is there. */
export interface Chart {
  readonly sheet: string;
  readonly statement: ChartStatement;
  readonly linked?: LinkedChart;
  readonly problem?: Problem;
}

export interface LinkedChart {
  /** The given that is swept, on whichever sheet it stands. */
  readonly over: number;
  readonly results: readonly number[];
  /** What runs up a map; it may be a value that is worked out, taken as if it were measured. */
  readonly against?: {
    readonly over: number;
    readonly from: Formula;
    readonly to: Formula;
    readonly unit?: Unit;
  };
  /** The cell that names the lines of a list. */
  readonly lines?: number;
  readonly from: Formula;
  readonly to: Formula;
  readonly xUnit?: Unit;
  readonly yUnit?: Unit;
  readonly marks: readonly {
    readonly axis: 'x' | 'y';
    readonly formula: Formula;
    readonly label: string;
  }[];
  readonly limits: readonly {
    readonly least: Formula;
    readonly most: Formula;
    readonly label: string;
  }[];
}

/** A drawing with its slots bound; either `linked` or `problem` is there. */
export interface Drawing {
  readonly sheet: string;
  readonly statement: DrawingStatement;
  readonly linked?: LinkedDrawing;
  readonly problem?: Problem;
}

export interface LinkedDrawing {
  readonly plan: DrawingPlan;
  readonly slots: readonly DrawnSlot[];
}

export interface DrawnSlot {
  readonly slot: DrawingSlot;
  readonly formula: Formula;
  readonly display: Display;
}

/** A table of figures; either `linked` or `problem` is there. */
export interface Figures {
  readonly sheet: string;
  readonly statement: FiguresStatement;
  readonly linked?: LinkedFigures;
  readonly problem?: Problem;
}

export interface LinkedFigures {
  readonly layout: 'rows' | 'columns';
  readonly figures: readonly LinkedFigure[];
}

export interface LinkedFigure {
  readonly cell: number;
  readonly label: string;
}

/** A question asked backwards; either `linked` or `problem` is there. */
export interface Find {
  readonly sheet: string;
  readonly statement: FindStatement;
  readonly linked?: LinkedFind;
  readonly problem?: Problem;
}

export interface LinkedFind {
  readonly given: number;
  readonly result: Formula;
  readonly target: Formula;
  /** Left out where the given's own range serves. */
  readonly from?: Formula;
  readonly to?: Formula;
  readonly near?: Formula;
}

/** A practice question; either `linked` or `problem` is there. */
export interface Practice {
  readonly sheet: string;
  readonly statement: PracticeStatement;
  readonly linked?: LinkedPractice;
  readonly problem?: Problem;
}

export interface LinkedPractice {
  readonly asked: number;
  readonly within: Formula;
  readonly vary: readonly LinkedVary[];
  readonly mistakes: readonly { readonly formula: Formula; readonly sentence: string }[];
}

/** A given that gets fresh numbers: SI, `step` between neighbouring ones. */
export interface LinkedVary {
  readonly given: number;
  readonly from: number;
  readonly to: number;
  readonly step?: number;
}
