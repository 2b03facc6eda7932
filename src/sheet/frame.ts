import type { Memory } from '../language/memory.ts';
import type { Reading } from './reading.ts';

/** The state of one job on a book: what was entered and what it came to. */
export interface Frame {
  readonly memory: Memory;
  /** What was understood of each given's entry, by cell. */
  readonly readings: (Reading | undefined)[];
}

/** A frame with the same entries and values whose memory can be changed without the first knowing. */
export function copyFrame({ memory, readings }: Frame): Frame {
  const { numbers, others, blanks } = memory;
  return {
    memory: { numbers: numbers.slice(), others: others.slice(), blanks: blanks.slice() },
    readings: readings.slice(),
  };
}
