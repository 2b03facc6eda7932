/**
 * Rows of a Markdown table: the text of each cell, code marks taken off.
 *
 * @param header the whole first line of the table
 */
export function readTable(markdown: string, header: string): readonly (readonly string[])[] {
  const lines = markdown.split('\n');
  const start = lines.indexOf(header);
  if (start < 0) throw new Error(`no table begins with ${header}`);
  const rest = lines.slice(start + 2);
  const end = rest.findIndex((line) => !line.startsWith('|'));
  return rest.slice(0, end < 0 ? rest.length : end).map(readCells);
}

function readCells(line: string): readonly string[] {
  const cells = line.slice(1, -1).split('|');
  return cells.map((cell) => cell.trim().replace(/^`([^`]*)`$/, '$1'));
}
