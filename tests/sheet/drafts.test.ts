import { describe, expect, test } from 'vitest';
import { draftCells, inputsOf, namesOfCheck, nearNames } from '../../src/sheet/drafts.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import { block } from './made-book.ts';

const draft = (...sheets: readonly (readonly [file: string, text: string])[]) =>
  draftCells(sheets.map(([file, text]) => readSheet(text, file)));

const TEXT =
  block('given', 'a = 1', 'bolt = pick "Short" from bolts') +
  block('work', 'b = a + ghost valid when a < limit "No."', 'limit = 3') +
  block('stack total', '+ a', '- b', '+ a') +
  block('check', 'b between a and limit') +
  block('table bolts', 'bolt,length (mm)', 'Short,1') +
  block('steps', '- One') +
  block('find', 'a so that b is 3 from 1 to 2');

test('every named value gets a number, in the order of the page; the rest gets none', () => {
  const { drafts, checks, names } = draft(['made.md', TEXT]);
  expect(drafts.map(({ index, role, statement }) => [index, role, statement.name])).toEqual([
    [0, 'given', 'a'],
    [1, 'given', 'bolt'],
    [2, 'work', 'b'],
    [3, 'work', 'limit'],
    [4, 'stack', 'total'],
    [5, 'table', 'bolts'],
  ]);
  expect(checks.map(({ statement }) => statement.name)).toEqual(['b']);
  expect(names.get('made')!.get('total')).toBe(4);
});

test('what each reads: names that are nowhere are left to the checker', () => {
  const drafts = draft(['made.md', TEXT]);
  const inputs = drafts.drafts.map((each) =>
    inputsOf(each, drafts).map((index) => drafts.drafts[index]!.statement.name),
  );
  expect(inputs).toEqual([[], ['bolts'], ['a', 'limit'], [], ['a', 'b'], []]);
});

test('what is carried in reads the value on its own sheet, and nothing where there is none', () => {
  const drafts = draft(
    ['a.md', block('given', 'x = 1')],
    ['b.md', block('from a', 'x as y', 'ghost') + block('from nowhere', 'z')],
  );
  expect(drafts.drafts.map((each) => inputsOf(each, drafts))).toEqual([[], [0], [], []]);
});

test('a check needs its subject first, then what its limits name, each once', () => {
  const { checks } = draft([
    'made.md',
    block('check', 'b between a and limit + b', 'b is "x"', 'b at most 3'),
  ]);
  expect(checks.map(({ statement }) => namesOfCheck(statement))).toEqual([
    ['b', 'a', 'limit'],
    ['b'],
    ['b'],
  ]);
});

describe('names that are taken', () => {
  test('the first keeps the name, the second is told where that is', () => {
    const { drafts, problems } = draft(['made.md', block('given', 'a = 1', 'a = 2')]);
    expect(drafts).toHaveLength(1);
    expect(problems).toMatchObject([
      {
        code: 'duplicate-name',
        place: { line: 3 },
        message: expect.stringContaining('made.md:2:1'),
      },
    ]);
  });

  test('two sheets may each have it', () => {
    const text = block('given', 'a = 1');
    expect(draft(['a.md', text], ['b.md', text])).toMatchObject({ problems: [], drafts: [{}, {}] });
  });

  test('of two sheets of one name the second is left out', () => {
    const { drafts, problems } = draft(
      ['x/a.md', block('given', 'a = 1')],
      ['y/a.md', block('given', 'b = 1')],
    );
    expect(drafts.map(({ statement }) => statement.name)).toEqual(['a']);
    expect(problems).toMatchObject([{ code: 'duplicate-sheet', place: { file: 'y/a.md' } }]);
  });
});

test('names that are like a word are those of one sheet', () => {
  const drafts = draft(
    ['a.md', block('given', 'finger_reading = 1')],
    ['b.md', block('given', 'gap = 1')],
  );
  expect(nearNames(drafts, 'a', 'finger_redaing')).toEqual(['finger_reading']);
  expect(nearNames(drafts, 'b', 'finger_redaing')).toEqual([]);
  expect(nearNames(drafts, 'nowhere', 'gap')).toEqual([]);
});

test('no sheets, and a sheet of words alone, draft nothing', () => {
  expect(draft()).toMatchObject({ drafts: [], checks: [], problems: [] });
  expect(draft(['a.md', 'Words.'])).toMatchObject({ drafts: [], checks: [], problems: [] });
});
