/** Brings a cell into view and puts the focus on it, so that keyboard and ear arrive there as well. */
export function reveal(element: HTMLElement | null): void {
  if (element === null) return;
  element.scrollIntoView({ block: 'center', behavior: 'instant' });
  element.focus({ preventScroll: true });
}
