import type { Problem } from '../../../src/language/problem.ts';
import { readSheet } from '../../../src/sheet/read-sheet.ts';
import type { Block, Sheet } from '../../../src/sheet/sheet.ts';

type BlockOf<K extends Block['kind']> = Extract<Block, { kind: K }>;

/** A sheet of one block; `opening` is the word of the block with what stands behind it. */
export function makeOne(opening: string, ...lines: readonly string[]): Sheet {
  return readSheet(['```' + opening, ...lines, '```', ''].join('\n'), 'made.md');
}

/** Reads one block. */
export function readBlock<K extends Block['kind']>(
  kind: K,
  info: string,
  ...lines: readonly string[]
): BlockOf<K> {
  const [part] = makeOne(`${kind}${info === '' ? '' : ` ${info}`}`, ...lines).parts;
  if (part?.kind !== kind) throw new Error(`no ${kind} block`);
  return part as BlockOf<K>;
}

/** What is wrong with a block, each as `code line:column`. */
export function faultsOf({ problems }: { readonly problems: readonly Problem[] }): string[] {
  return problems.map(({ code, place }) => `${code} ${place!.line}:${place!.column}`);
}
