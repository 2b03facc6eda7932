/** Files that are dropped on the page, while the function that it gives has not been called. */
export function listenForDrops(take: (file: File) => void): () => void {
  const allow = (event: DragEvent): void => {
    if (event.dataTransfer?.types.includes('Files')) event.preventDefault();
  };
  const drop = (event: DragEvent): void => {
    const file = event.dataTransfer?.files[0];
    if (file === undefined) return;
    event.preventDefault();
    take(file);
  };
  document.addEventListener('dragover', allow);
  document.addEventListener('drop', drop);
  return () => {
    document.removeEventListener('dragover', allow);
    document.removeEventListener('drop', drop);
  };
}
