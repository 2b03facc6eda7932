import type { Part, Sheet } from '../sheet/sheet.ts';

/**
 * What a note on a block is kept under: its kind and the first thing that it names, so that the note
 * stays with it when blocks are moved. A second block of the same name on the sheet is numbered.
 */
export function listBlockKeys(sheet: Sheet): ReadonlyMap<Part, string> {
  const counts = new Map<string, number>();
  const keys = new Map<Part, string>();
  for (const part of sheet.parts) {
    if (part.kind === 'narrative') continue;
    const name = `${part.kind} ${nameOf(part)}`.trim();
    const count = (counts.get(name) ?? 0) + 1;
    counts.set(name, count);
    keys.set(part, count === 1 ? name : `${name} ${count}`);
  }
  return keys;
}

/** Blocks of every kind carry what they name in one of these places. */
interface Named {
  readonly title?: string;
  readonly statements?: readonly { readonly name?: string; readonly label?: string }[];
  readonly stack?: { readonly name: string } | undefined;
  readonly table?: { readonly name?: string; readonly title?: string } | undefined;
  readonly figures?: { readonly title: string } | undefined;
  readonly chart?: { readonly title: string } | undefined;
  readonly drawing?: { readonly title: string } | undefined;
  readonly practice?: { readonly title: string } | undefined;
}

function nameOf(block: Named): string {
  const first = block.statements?.[0];
  return (
    block.stack?.name ??
    block.table?.name ??
    block.table?.title ??
    block.figures?.title ??
    block.chart?.title ??
    block.drawing?.title ??
    block.practice?.title ??
    first?.name ??
    first?.label ??
    block.title ??
    ''
  );
}
