/** Something on the page that shows cells. */
export interface View {
  readonly element: HTMLElement;
  /** Indexes of the cells that it shows; it is refreshed when one of them has been worked again. */
  readonly cells: readonly number[];
  /** Mutates the element: shows what holds now. */
  refresh(): void;
  /** Lets go of what the browser holds for it. */
  dispose?(): void;
}
