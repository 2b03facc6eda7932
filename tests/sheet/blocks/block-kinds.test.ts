import { describe, expect, test } from 'vitest';
import { BLOCK_KINDS, isBlockKind } from '../../../src/sheet/blocks/block-kinds.ts';
import { makeOne } from './made-block.ts';

describe.each(Object.keys(BLOCK_KINDS))('the word %s', (kind) => {
  test('opens a block of its kind, if it is empty, if it holds what no block can read', () => {
    for (const lines of [[], [''], ['§§§', '"', '"']]) {
      expect(makeOne(kind, ...lines).parts[0]).toMatchObject({ kind, line: 1 });
    }
  });

  test('opens none in capitals, or with a letter too many', () => {
    expect(isBlockKind(kind.toUpperCase())).toBe(false);
    expect(isBlockKind(`${kind}s`)).toBe(false);
  });
});

test.each(['', 'text', 'ts', 'constructor', 'toString', '__proto__'])(
  'the word "%s" opens none: such a block is only shown',
  (word) => {
    expect(isBlockKind(word)).toBe(false);
    expect(makeOne(word, 'gap = 3 in').parts[0]).toMatchObject({ kind: 'narrative' });
  },
);
