import { type Dimension, nameDimension } from '../units/dimension.ts';

/** What sort of value an expression has, known before anything is computed. */
export type Kind =
  | { readonly type: 'quantity'; readonly dimension: Dimension }
  /** A list of quantities of one dimension; `length` where it is known beforehand. */
  | { readonly type: 'list'; readonly dimension: Dimension; readonly length?: number }
  | { readonly type: 'text' }
  | { readonly type: 'texts'; readonly length?: number }
  | { readonly type: 'truth' }
  /** One row of a table: a value for each column. */
  | { readonly type: 'row'; readonly columns: Columns }
  | { readonly type: 'table'; readonly columns: Columns };

/** Kind of one cell of each column, by the column's name, in the order of the header. */
export type Columns = ReadonlyMap<string, Kind>;

/** A list as computed: SI numbers. */
export type QuantityList = Float64Array;

export interface Row {
  /** Text of the first column, by which people know the row. */
  readonly key: string;
  readonly cells: ReadonlyMap<string, Value>;
}

/** A value at run time. Quantities are plain SI numbers; their dimension is in the kind. */
export type Value =
  | number
  | QuantityList
  | string
  | readonly string[]
  | boolean
  | Row
  | readonly Row[];

/** A kind in words, for messages: "list of length". */
export function nameKind(kind: Kind): string {
  switch (kind.type) {
    case 'quantity':
      return nameDimension(kind.dimension);
    case 'list':
      return `list of ${nameDimension(kind.dimension)}`;
    case 'texts':
      return 'list of text';
    case 'text':
      return 'text';
    case 'truth':
      return 'true or false';
    case 'row':
      return 'table row';
    case 'table':
      return 'table';
    default:
      return kind satisfies never;
  }
}
