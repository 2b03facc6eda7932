import type { Block } from '../sheet.ts';
import type { BlockSource } from './block-source.ts';
import { readCautionBlock } from './caution.ts';
import { readChartBlock } from './chart.ts';
import { readCheckBlock } from './check.ts';
import { readDrawingBlock } from './drawing.ts';
import { readFiguresBlock } from './figures.ts';
import { readFindBlock } from './find.ts';
import { readFromBlock } from './from.ts';
import { readGivenBlock } from './given.ts';
import { readPracticeBlock } from './practice.ts';
import { readStackBlock } from './stack.ts';
import { readStepsBlock } from './steps.ts';
import { readTableBlock } from './table.ts';
import { readWorkBlock } from './work.ts';

/** The live blocks: the first word of a fence's info string, and what reads the block. */
export const BLOCK_KINDS: Readonly<Record<Block['kind'], (block: BlockSource) => Block>> = {
  given: readGivenBlock,
  find: readFindBlock,
  from: readFromBlock,
  work: readWorkBlock,
  practice: readPracticeBlock,
  stack: readStackBlock,
  check: readCheckBlock,
  chart: readChartBlock,
  drawing: readDrawingBlock,
  table: readTableBlock,
  figures: readFiguresBlock,
  steps: readStepsBlock,
  caution: readCautionBlock,
};

export function isBlockKind(word: string): word is Block['kind'] {
  return Object.hasOwn(BLOCK_KINDS, word);
}
