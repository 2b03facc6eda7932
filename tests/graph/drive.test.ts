import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { createDrive, type Drive } from '../../src/graph/drive.ts';
import { type Book, linkBook } from '../../src/sheet/book.ts';
import { createFrame } from '../../src/sheet/create-frame.ts';
import { enterGiven } from '../../src/sheet/enter.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import { outcomeOf, solve, valueOfCell } from '../../src/sheet/solve.ts';
import { block } from '../sheet/made-book.ts';

// The longest chain takes its time on a busy machine.
vi.setConfig({ testTimeout: 60_000 });

/** A driven book; names are of the first sheet, or `sheet/name`. */
interface Driven {
  readonly book: Book;
  readonly drive: Drive;
  /** Names of the cells that were worked since the last call, in the order of working. */
  worked(): readonly string[];
  enter(name: string, text: string | undefined): void;
  value(name: string): unknown;
  state(name: string): string;
}

async function driveSheets(sheets: Readonly<Record<string, string>>): Promise<Driven> {
  const book = linkBook(Object.entries(sheets).map(([file, text]) => readSheet(text, file)));
  let log: string[] = [];
  const drive = createDrive(book, (index) => log.push(shorten(book, index)));
  const at = (name: string) => find(book, name);
  const driven: Driven = {
    book,
    drive,
    worked() {
      const seen = log;
      log = [];
      return seen;
    },
    enter: (name, text) => {
      drive.enter(at(name), text === undefined ? undefined : { text });
    },
    value: (name) => valueOfCell(book.cells[at(name)]!, drive.frame),
    state: (name) => outcomeOf(book, drive.frame, at(name)).state,
  };
  await drive.settled();
  return driven;
}

const driveSheet = (...blocks: readonly string[]) => driveSheets({ 'made.md': blocks.join('\n') });

function find(book: Book, name: string): number {
  const [sheet, own] = name.includes('/') ? name.split('/') : [book.sheets[0]!.name, name];
  return book.find(sheet!, own!)!.index;
}

function shorten(book: Book, index: number): string {
  const { sheet, name, id } = book.cells[index]!;
  return sheet === book.sheets[0]!.name ? name : id;
}

/**
 *     a ──▶ sum ──▶ twice
 *           ▲
 *     b ────┘
 *     c ──▶ other
 */
const FORK = [
  block('given', 'a = 1', 'b = 2', 'c = 3'),
  block('work', 'sum = a + b', 'twice = sum * 2', 'other = c * 10'),
] as const;

describe('only what depends on a change is worked', () => {
  test('at the start each cell once, after those that it reads', async () => {
    const { worked, drive } = await driveSheet(...FORK);
    const order = worked();
    expect([...order].sort()).toEqual(['a', 'b', 'c', 'other', 'sum', 'twice']);
    expect(order.indexOf('twice')).toBeGreaterThan(order.indexOf('sum'));
    expect([...drive.counts]).toEqual([1, 1, 1, 1, 1, 1]);
  });

  test('a given that is changed, and what hangs on it', async () => {
    const { enter, drive, worked, value } = await driveSheet(...FORK);
    worked();
    enter('a', '10');
    await drive.settled();
    expect(worked()).toEqual(['a', 'sum', 'twice']);
    expect([value('sum'), value('twice'), value('other')]).toEqual([12, 24, 30]);
  });

  test('a branch of its own leaves the rest alone', async () => {
    const { enter, drive, worked } = await driveSheet(...FORK);
    worked();
    enter('c', '4');
    await drive.settled();
    expect(worked()).toEqual(['c', 'other']);
    expect([...drive.counts]).toEqual([1, 1, 2, 1, 1, 2]);
  });

  test('two changes at once are worked once', async () => {
    const { enter, drive, worked, value } = await driveSheet(...FORK);
    worked();
    enter('a', '10');
    enter('b', '20');
    await drive.settled();
    expect([...worked()].sort()).toEqual(['a', 'b', 'sum', 'twice']);
    expect(value('twice')).toBe(60);
  });

  test('the same given three times before a frame is worked once, with the last', async () => {
    const { enter, drive, value } = await driveSheet(...FORK);
    enter('a', '10');
    enter('a', '20');
    enter('a', '30');
    await drive.settled();
    expect(value('sum')).toBe(32);
    expect(drive.counts[0]).toBe(2);
    expect(drive.counts[3]).toBe(2);
  });

  test('the sheet’s own value comes back when nothing is entered', async () => {
    const { enter, drive, value } = await driveSheet(...FORK);
    enter('a', '10');
    await drive.settled();
    enter('a', undefined);
    await drive.settled();
    expect(value('sum')).toBe(3);
  });

  test('when nothing is left to be worked it is settled at once', async () => {
    const { drive, worked } = await driveSheet(...FORK);
    worked();
    await drive.settled();
    expect(worked()).toEqual([]);
  });
});

test('a diamond is worked once where it closes', async () => {
  //     ┌──▶ left ──┐
  //     a           ▼
  //     └──▶ right ─▶ sum
  const { enter, drive, worked, value } = await driveSheet(
    block('given', 'a = 1'),
    block('work', 'left = a + 1', 'right = a * 2', 'sum = left * right'),
  );
  worked();
  enter('a', '3');
  await drive.settled();
  const order = worked();
  expect([...order].sort()).toEqual(['a', 'left', 'right', 'sum']);
  expect(order.at(-1)).toBe('sum');
  expect(value('sum')).toBe(24);
});

test('a change travels across sheets and leaves them alone where they do not carry it', async () => {
  //     made            other
  //     a ──▶ b   ┌──▶ carried ──▶ twice
  //     └─────────┘     own ──▶ apart
  const { enter, drive, worked, value } = await driveSheets({
    'made.md': block('given', 'a = 1') + block('work', 'b = a + 1'),
    'other.md':
      block('from made', 'a as carried') +
      block('given', 'own = 7') +
      block('work', 'twice = carried * 2', 'apart = own * 2'),
  });
  worked();
  enter('a', '5');
  await drive.settled();
  expect([...worked()].sort()).toEqual(['a', 'b', 'other/carried', 'other/twice']);
  expect(value('other/twice')).toBe(10);
});

test('a table is read by all that pick from it, and worked once', async () => {
  //     sets ──▶ set ──▶ first_one
  const { enter, drive, worked, value } = await driveSheet(
    block('table sets "Sets"', 'set,ratios', 'Wide,"[3, 2]"', 'Close,"[2, 1]"'),
    block('given', 'set = pick "Wide" from sets'),
    block('work', 'first_one = first(set.ratios)'),
  );
  worked();
  enter('set', 'Close');
  await drive.settled();
  expect(worked()).toEqual(['set', 'first_one']);
  expect(value('first_one')).toBe(2);
});

describe('what breaks can be mended', () => {
  //     a ──▶ root ──▶ end
  const blocks = [block('given', 'a = 4'), block('work', 'root = sqrt(a)', 'end = root + 1')];

  test('a cell fails, those that hang on it wait, and all come back', async () => {
    const { enter, drive, value, state } = await driveSheet(...blocks);
    expect(value('end')).toBe(3);
    enter('a', '-4');
    await drive.settled();
    expect([state('a'), state('root'), state('end')]).toEqual(['value', 'failed', 'waiting']);
    enter('a', '9');
    await drive.settled();
    expect(value('end')).toBe(4);
  });

  test('an entry that cannot be read and then can', async () => {
    const { enter, drive, value, state } = await driveSheet(...blocks);
    enter('a', 'nine');
    await drive.settled();
    expect([state('a'), state('root'), state('end')]).toEqual(['failed', 'waiting', 'waiting']);
    enter('a', '9');
    await drive.settled();
    expect(value('end')).toBe(4);
  });

  test('a given that is emptied and filled again', async () => {
    const { enter, drive, value, state } = await driveSheet(...blocks);
    enter('a', '');
    await drive.settled();
    expect([state('a'), state('root'), state('end')]).toEqual(['blank', 'waiting', 'waiting']);
    enter('a', '16');
    await drive.settled();
    expect(value('end')).toBe(5);
  });

  test('a list that changes its length breaks and mends its pair', async () => {
    const { enter, drive, value, state } = await driveSheet(
      block('given', 'a = [1, 2]', 'b = [3, 4]'),
      block('work', 'both = a + b'),
    );
    enter('a', '[1, 2, 3]');
    await drive.settled();
    expect(state('both')).toBe('failed');
    enter('b', '[1, 1, 1]');
    await drive.settled();
    expect(value('both')).toEqual(Float64Array.of(2, 3, 4));
  });
});

describe('names come from the book alone', () => {
  test.each(['globalthis', 'process', 'document', 'invalidation', 'visibility'])(
    'a formula that reads %s finds no global',
    async (name) => {
      const { book, state, value } = await driveSheet(
        block('given', 'a = 1'),
        block('work', `b = ${name} + 1`, 'c = a + 1'),
      );
      expect(book.problems.map(({ code }) => code)).toEqual(['unknown-name']);
      expect(state('b')).toBe('failed');
      expect(value('c')).toBe(2);
    },
  );

  test.each(['constructor', 'invalidation', 'visibility', 'name', 'undefined', 'then'])(
    'a given called %s is as good as any, unless it is a word of the language',
    async (name) => {
      const { value, enter, drive, book } = await driveSheet(
        block('given', `${name} = 1`),
        block('work', `twice = ${name} * 2`),
      );
      if (book.problems.length > 0) {
        expect(name).toBe('then');
        return;
      }
      enter(name, '3');
      await drive.settled();
      expect(value('twice')).toBe(6);
    },
  );
});

describe('a loop never reaches the runtime', () => {
  //     a ◀──▶ b      c ──▶ d
  //     └──▶ e
  const blocks = [
    block('work', 'a = b + 1', 'b = a + 1', 'e = a + 1'),
    block('given', 'c = 1'),
    block('work', 'd = c + 1'),
  ];

  test('the cells beside it are worked', async () => {
    const { value, state, worked } = await driveSheet(...blocks);
    expect([...worked()].sort()).toEqual(['a', 'b', 'c', 'd', 'e']);
    expect([state('a'), state('b'), state('e')]).toEqual(['failed', 'failed', 'waiting']);
    expect(value('d')).toBe(2);
  });

  test('and stay alive', async () => {
    const { value, enter, drive, worked } = await driveSheet(...blocks);
    worked();
    enter('c', '5');
    await drive.settled();
    expect(worked()).toEqual(['c', 'd']);
    expect(value('d')).toBe(6);
  });

  test('a loop through a given carried to another sheet', async () => {
    const { state } = await driveSheets({
      'made.md': block('from other', 'back') + block('work', 'forth = back + 1'),
      'other.md': block('from made', 'forth') + block('work', 'back = forth + 1'),
    });
    expect(state('forth')).toBe('failed');
  });
});

test('after it is disposed nothing is worked any more', async () => {
  const { enter, drive, worked } = await driveSheet(...FORK);
  worked();
  drive.dispose();
  enter('a', '10');
  await new Promise((resolve) => setTimeout(resolve, 20));
  expect(worked()).toEqual([]);
});

test('an empty book is settled', async () => {
  const { book, worked } = await driveSheets({});
  expect(book.cells).toEqual([]);
  expect(worked()).toEqual([]);
});

test('a chain of 20 000 cells is worked to its end, each cell once', async () => {
  //     a0 ──▶ a1 ──▶ a2 … ──▶ a20000
  const lines = Array.from({ length: 20_000 }, (_, i) => `a${i + 1} = a${i} + 1`);
  const { value, drive } = await driveSheet(block('given', 'a0 = 0'), block('work', ...lines));
  expect(value('a20000')).toBe(20_000);
  expect(drive.counts.every((count) => count === 1)).toBe(true);
});

describe('driven by the runtime and solved in order', () => {
  /** Sheets of given and work lines that read any line before or behind them. */
  const anySheet = fc
    .array(fc.array(fc.nat(9), { maxLength: 3 }), { minLength: 1, maxLength: 10 })
    .map((reads) =>
      reads.map((inputs, i) => {
        const terms = inputs.filter((input) => input < reads.length).map((input) => `v${input}`);
        return terms.length === 0 ? undefined : `v${i} = ${terms.join(' - ')} + ${i}`;
      }),
    )
    .map((lines) => {
      const givens = lines.flatMap((line, i) => (line === undefined ? [`v${i} = ${i}`] : []));
      const works = lines.flatMap((line) => line ?? []);
      return block('given', ...givens) + block('work', ...works);
    });
  const anyEntries = fc.array(fc.tuple(fc.nat(9), fc.constantFrom('1', '-2.5', '', 'nonsense')), {
    maxLength: 4,
  });

  test('come to the same, whatever is entered', async () => {
    await fc.assert(
      fc.asyncProperty(anySheet, anyEntries, async (sheet, entries) => {
        const { book, drive } = await driveSheets({ 'made.md': sheet });
        const frame = createFrame(book);
        for (const [i, text] of entries) {
          const cell = book.find('made', `v${i}`);
          if (cell?.role !== 'given') continue;
          drive.enter(cell.index, { text });
          enterGiven(book, frame, cell.index, { text });
          await drive.settled();
        }
        solve(book, frame);
        const outcomes = (of: typeof frame) =>
          book.cells.map(({ index }) => outcomeOf(book, of, index));
        expect(outcomes(drive.frame)).toEqual(outcomes(frame));
      }),
      { numRuns: 60 },
    );
  });
});
