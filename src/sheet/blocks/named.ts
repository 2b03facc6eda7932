import type { NameNode } from '../../language/tree.ts';
import type { Clauses } from '../clauses.ts';
import type { Display, Named } from '../sheet.ts';
import type { BlockSource } from './block-source.ts';

/** What all statements that name a cell share. */
export function createNamed(
  block: BlockSource,
  name: NameNode,
  to: number,
  clauses: Clauses,
): Named {
  return {
    name: name.name,
    place: block.places(name.from),
    label: clauses.label ?? labelFrom(name.name),
    from: name.from,
    to,
    ...(clauses.source === undefined ? {} : { source: clauses.source }),
  };
}

/** A name as words, for values without a label: `gap_when_worn` gives `Gap when worn`. */
export function labelFrom(name: string): string {
  const words = name.replaceAll('_', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}

export function createDisplay({ unit, resolution, fraction }: Clauses): Display {
  return {
    ...(unit === undefined ? {} : { unit }),
    ...(resolution === undefined ? {} : { resolution }),
    ...(fraction === undefined ? {} : { fraction }),
  };
}
