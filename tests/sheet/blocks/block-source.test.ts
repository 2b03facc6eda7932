import { expect, test } from 'vitest';
import { fault } from '../../../src/language/parse.ts';
import type { Problem } from '../../../src/language/problem.ts';
import {
  attempt,
  type BlockSource,
  cursorOver,
  readStatements,
} from '../../../src/sheet/blocks/block-source.ts';
import { createPlaces } from '../../../src/sheet/places.ts';

const SOURCE = 'Words.\n```work\none\ntwo\n  too\nthree\n```\n';

const BLOCK: BlockSource = {
  source: SOURCE,
  places: createPlaces(SOURCE, 'made.md'),
  info: { from: 14, to: 14 },
  body: { from: SOURCE.indexOf('one'), to: SOURCE.lastIndexOf('```') },
  line: 2,
};

test('what is read comes back, and no problem with it', () => {
  const problems: Problem[] = [];
  expect(attempt(BLOCK, problems, () => 3)).toBe(3);
  expect(problems).toEqual([]);
});

test('a fault becomes a problem with its place', () => {
  const problems: Problem[] = [];
  const span = { from: SOURCE.indexOf('two'), to: SOURCE.indexOf('two') + 3 };
  const found = attempt(BLOCK, problems, () => {
    throw fault('unclosed-text', span, undefined);
  });
  expect(found).toBeUndefined();
  expect(problems).toMatchObject([{ code: 'unclosed-text', place: { line: 4, column: 1 } }]);
});

test('an error of the program is not taken for one of the sheet', () => {
  const crash = () => {
    throw new TypeError('a slip');
  };
  expect(() => attempt(BLOCK, [], crash)).toThrow(TypeError);
});

test('a cursor sees its own stretch and nothing behind it', () => {
  const from = SOURCE.indexOf('two');
  const cursor = cursorOver(BLOCK, { from, to: from + 3 });
  expect(cursor.take()).toMatchObject({ type: 'word', text: 'two', from });
  expect(cursor.peek().type).toBe('end');
});

test('each statement is read by itself: one with a fault is left out, the others stand', () => {
  const { statements, problems } = readStatements(BLOCK, (cursor, span) => {
    const word = cursor.take();
    if (word.type === 'word' && word.text === 'two') throw fault('unclosed-text', word, undefined);
    return SOURCE.slice(span.from, span.to);
  });
  expect(statements).toEqual(['one', 'three']);
  expect(problems).toHaveLength(1);
});
