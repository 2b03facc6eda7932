import type { Dimension } from '../units/dimension.ts';

/** One thing that a kind of drawing is bound to. */
export interface DrawingSlot {
  readonly name: string;
  readonly shape: 'quantity' | 'list' | 'text' | 'texts';
  /** For numbers; a plain number where it is left out. */
  readonly dimension?: Dimension;
  /** True where the drawing does without it; it may then be blank too. */
  readonly optional?: boolean;
  readonly doc: string;
}

/** What a drawing is made from: values by slot, in SI, and their texts as the page shows them. */
export interface DrawingData {
  readonly title: string;
  /** Undefined where the slot is not bound or has no value. */
  number(slot: string): number | undefined;
  list(slot: string): readonly number[] | undefined;
  texts(slot: string): readonly string[] | undefined;
  /** The value with its unit, in the units of the page; '?' where there is none. Element `i` of a list. */
  show(slot: string, i?: number): string;
  /** Any further length, angle … in the unit of a slot: a distance between two drawn things. */
  showAs(slot: string, value: number): string;
}

export interface DrawingPaper {
  readonly document: Document;
  /** Width in px to draw for. */
  readonly width: number;
  /** Kept apart from other drawings on the same page. */
  readonly idPrefix: string;
}

/** What a kind of drawing is called and bound to; the sheet's checker and the guide read this. */
export interface DrawingPlan {
  readonly name: string;
  /** What it shows, in one sentence. */
  readonly doc: string;
  readonly slots: readonly DrawingSlot[];
}

/** A kind of drawing: its plan, how it is drawn, what it says in words. */
export interface DrawingDeclaration extends DrawingPlan {
  /** Draws to scale; where values are missing the rest is drawn without them. */
  draw(data: DrawingData, paper: DrawingPaper): SVGElement;
  /** What the drawing shows, for those who cannot see it. */
  describe(data: DrawingData): string;
}
