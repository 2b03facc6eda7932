import { describe, expect, test } from 'vitest';
import { printText } from '../../src/language/print-text.ts';
import { answerFind } from '../../src/sheet/find/find-given.ts';
import { copyFrame } from '../../src/sheet/frame.ts';
import { solve } from '../../src/sheet/solve.ts';
import { openNotebooks, work } from '../support/notebooks.ts';

const BOOK = openNotebooks();
const { frame: FRAME } = work(BOOK, '20-gearing');
const FINDS = BOOK.finds.map((find) => [find.sheet, find.statement.label, find] as const);

test('there are questions asked backwards', () => {
  expect(FINDS.length).toBeGreaterThan(3);
});

describe.each(FINDS)('%s, find "%s"', (sheet, _label, { linked, problem }) => {
  const found = linked && answerFind(BOOK, FRAME, sheet, linked);

  test('has an answer', () => {
    expect(problem).toBeUndefined();
    expect(found?.solutions).not.toEqual([]);
  });

  test('is met when its answer is put in', () => {
    for (const { from, to } of found!.solutions) {
      for (const value of [from, to]) {
        const fresh = copyFrame(FRAME);
        fresh.memory.numbers[linked!.given] = value;
        fresh.memory.blanks[linked!.given] = 0;
        fresh.readings[linked!.given] = { state: 'value', value, explicit: false };
        solve(BOOK, fresh);
        const result = linked!.result.code.run(fresh.memory) as number;
        const off = Math.abs(result - found!.target!);
        expect(off, printText(linked!.result.tree)).toBeLessThan(1e-9 * (1 + Math.abs(result)));
      }
    }
  });
});
