import type { FigureTable } from '../sheet/figure-table.ts';
import type { Sheet } from '../sheet/sheet.ts';
import type { PrintOptions } from './figure-svg.ts';
import type { Figure } from './figures.ts';
import type { SourceNote } from './sources.ts';

export type FigureFormat = 'svg' | 'png' | 'csv';
export type TableFormat = 'md' | 'html' | 'csv';

export interface BundleOptions extends PrintOptions {
  readonly dotsPerInch: number;
  readonly figureFormats: readonly FigureFormat[];
  readonly tableFormats: readonly TableFormat[];
  /** Which figures, by id; all of them where it is left out. */
  readonly chosen?: ReadonlySet<string>;
  /** Stands over the whole: the car, the job. */
  readonly title: string;
  /** Who is to be named beside the figures. */
  readonly credit: string;
  /** Words of one's own in place of those that were made from the data. */
  wordsOf(figure: Figure): { readonly caption?: string; readonly alt?: string };
  /** The text of the job file, to lie beside the figures. */
  readonly job?: string;
}

/** A figure with the words that stand beside it. */
export interface CaptionedFigure extends Figure {
  readonly files: readonly string[];
}

export interface BundleSheet {
  readonly sheet: Sheet;
  readonly figures: readonly CaptionedFigure[];
  readonly tables: readonly FigureTable[];
  readonly sources: readonly SourceNote[];
}
