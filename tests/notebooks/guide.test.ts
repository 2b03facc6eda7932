import { describe, expect, test } from 'vitest';
import { DRAWINGS } from '../../src/drawing/drawing-kinds.ts';
import { BLOCK_KINDS } from '../../src/sheet/blocks/block-kinds.ts';
import { outcomeOf } from '../../src/sheet/solve.ts';
import { readTable } from '../support/markdown-table.ts';
import { enter, openText, type Worked, work } from '../support/notebooks.ts';
import { expectSame, expectSameFormulas, resultOf, workLines } from '../support/same-value.ts';
import { readTree } from '../support/source-tree.ts';

/** Words that may stand behind a value, each to be found in the guide. */
const CLAUSE_WORDS = [
  'as',
  'to',
  'from',
  'how',
  'datum',
  'source',
  'below',
  'above',
  'positive',
  'negative',
  'zero',
  'near',
  'within',
  'valid when',
  'a line for each',
  'x',
  'y',
  'on x',
  'is',
];

const GUIDE = readTree('notebooks', ['how-a-sheet-works.md']).values().next().value!;

describe('where a reader may be in doubt', () => {
  const rows = readTable(GUIDE, '| written | is the same as |');

  test.each(rows)('%s is the same as %s', (written, same) => {
    expectSameFormulas(written!, same!);
  });
});

describe('what is refused', () => {
  const rows = readTable(GUIDE, '| written | why |');

  test.each(rows)('%s, since %s', (written) => {
    const worked = workLines([`left = ${written}`]);
    const states = worked.book.cells.map((cell) =>
      outcomeOf(worked.book, worked.frame, cell.index),
    );
    const failed = states.some((outcome) => outcome.state === 'failed');
    expect(failed || worked.book.problems.length > 0).toBe(true);
  });
});

describe('what may be typed into a field', () => {
  test.each(readTable(GUIDE, '| typed | field in | understood as |'))(
    '%s in a field of %s is %s',
    (typed, unit, understood) => {
      const worked = workText(
        `\`\`\`given\nfield = 1 ${unit}\n\`\`\`\n\`\`\`work\nright = ${understood}\n\`\`\`\n`,
      );
      expect(enter(worked, 'field', typed!)).toMatchObject({ state: 'value' });
      expectSame(resultOf(worked, 'field'), resultOf(worked, 'right'));
    },
  );

  test.each(readTable(GUIDE, '| typed | field in | why it is refused |'))(
    '%s in a field of %s is refused: %s',
    (typed, unit) => {
      const worked = workText(`\`\`\`given\nfield = 1 ${unit}\n\`\`\`\n`);
      expect(enter(worked, 'field', typed!)).toMatchObject({ state: 'failed' });
    },
  );
});

test('each live block stands beside its own source', () => {
  const pairs = GUIDE.split('````text\n')
    .slice(1)
    .map((piece) => piece.split('\n````\n\n') as [source: string, after: string])
    .filter(([, after]) => after.startsWith('```'));
  expect(pairs.length).toBeGreaterThan(15);
  for (const [source, after] of pairs) expect(after.startsWith(`${source}\n`)).toBe(true);
});

test.each(Object.keys(BLOCK_KINDS))('a %s block is listed, shown and live', (kind) => {
  const listed = readTable(GUIDE, '| word | what it is |').map(([word]) => word);
  expect(listed).toContain(kind);
  expect(GUIDE).toMatch(new RegExp(`^\`{4}text\\n\`{3}${kind}\\b`, 'm'));
  expect(GUIDE).toMatch(new RegExp(`\\n\\n\`{3}${kind}\\b`));
});

test.each(CLAUSE_WORDS)('"%s" is explained', (word) => {
  expect(GUIDE).toMatch(new RegExp(`\`(… )?${word}\\b`));
});

test('every kind of drawing is listed with what it needs and what it may have', () => {
  const rows = readTable(GUIDE, '| drawing | shows | needs | optional |');
  const plain = rows.map((row) => row.map((cell) => cell.replaceAll('`', '')));
  const namesOf = (slots: readonly { readonly name: string }[]) =>
    slots.map(({ name }) => name).join(', ');
  expect(plain).toEqual(
    DRAWINGS.map(({ name, doc, slots }) => [
      name,
      doc,
      namesOf(slots.filter(({ optional }) => optional !== true)),
      namesOf(slots.filter(({ optional }) => optional === true)),
    ]),
  );
});

function workText(text: string): Worked {
  return work(openText(text), 'made');
}
