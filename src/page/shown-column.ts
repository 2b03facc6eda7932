import type { Column } from '../job/work-columns.ts';

/** One column as the page shows it. */
export interface ShownColumn extends Column {
  readonly name: string;
}
