import { expect, test } from 'vitest';
import * as BLOCKS from '../../src/page/later-blocks.ts';

test('charts, drawings, tables and steps come together', () => {
  expect(Object.keys(BLOCKS).toSorted()).toEqual([
    'createChart',
    'createDrawing',
    'createReferenceTable',
    'createSteps',
  ]);
});
