import { describe, expect, test } from 'vitest';
import { fail } from '../../src/language/problem.ts';
import { type Draft, draftCells } from '../../src/sheet/drafts.ts';
import { type Base, broken } from '../../src/sheet/linked.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import { block } from './made-book.ts';

const { drafts } = draftCells([
  readSheet(
    block('given', 'a = 1') +
      block('from x', 'b') +
      block('work', 'c = 1') +
      block('stack d', '+ 1') +
      block('table e', 'f'),
    'made.md',
  ),
]);

const BASE: Base = {
  index: 7,
  id: 'made/a',
  sheet: 'made',
  name: 'a',
  label: 'A',
  place: { file: 'made.md', line: 1, column: 1 },
  display: {},
  inputs: [],
};
const SPAN = { from: 0, to: 1 };
const fault = fail('unclosed-text', SPAN, undefined);
const other = fail('overflow', SPAN, undefined);
const waiting = fail('waiting', SPAN, { name: 'b', why: 'has an error' });

describe.each(drafts.map((draft): [string, Draft] => [draft.role, draft]))(
  'a broken %s',
  (role, draft) => {
    test('keeps the role that it would have had, and has no kind', () => {
      const { cell } = broken(draft, BASE, [fault], [fault]);
      expect(cell).toMatchObject({ ...BASE, role, kind: undefined, statement: draft.statement });
    });

    test('is barred by its first problem, and reports all but what merely waits', () => {
      const { cell, problems } = broken(draft, BASE, [fault, other], [waiting, fault, other]);
      expect(cell.problem).toBe(fault);
      expect(problems).toEqual([fault, other]);
    });
  },
);
