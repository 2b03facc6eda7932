import { describe, expect, test } from 'vitest';
import { drawProblem, type PracticeProblem } from '../../src/sheet/practice/draw-problem.ts';
import { type Feedback, judgeAnswer } from '../../src/sheet/practice/judge-answer.ts';
import { formatUnit } from '../../src/units/format-unit.ts';
import { openNotebooks, work } from '../support/notebooks.ts';

const BOOK = openNotebooks();
const { frame: FRAME } = work(BOOK, '20-gearing');
const PRACTICES = BOOK.practices.map(
  (practice) => [practice.sheet, practice.statement.title, practice] as const,
);
const SEEDS = Array.from({ length: 25 }, (_, i) => i + 1);

test('there are practice questions', () => {
  expect(PRACTICES.length).toBeGreaterThan(3);
});

describe.each(PRACTICES)('%s, practice "%s"', (_sheet, _title, { linked, problem }) => {
  const deal = (seed: number) => drawProblem(BOOK, FRAME, linked!, seed);
  const dealt = SEEDS.flatMap((seed) => (linked && deal(seed)) ?? []);
  const tell = (of: PracticeProblem, value: number): Feedback => {
    const { display, kind } = BOOK.cells[linked!.asked]!;
    const symbol = display.unit === undefined ? '' : ` ${formatUnit(display.unit)}`;
    const typed = `${value / (display.unit?.factor ?? 1)}${symbol}`;
    return judgeAnswer(typed, of, linked!, kind!, display.unit);
  };

  test('can be asked with any numbers', () => {
    expect(problem).toBeUndefined();
    expect(dealt).toHaveLength(SEEDS.length);
  });

  test('knows its own answer, and none that is further off than it allows', () => {
    for (const one of dealt) {
      expect(tell(one, one.answer).type).toBe('right');
      expect(tell(one, one.answer + 1.5 * one.within).type).not.toBe('right');
    }
  });

  test('deals fresh numbers with each seed, the same to all with one', () => {
    const answers = dealt.map(({ answer }) => answer);
    expect(new Set(answers).size).toBeGreaterThan(SEEDS.length / 2);
    expect(SEEDS.slice(0, 3).map((seed) => deal(seed)!.answer)).toEqual(answers.slice(0, 3));
  });

  test('tells each of its mistakes from the answer, and now and then from all the others', () => {
    expect(linked!.mistakes.length).toBeGreaterThan(1);
    linked!.mistakes.forEach(({ sentence }, i) => {
      const told = dealt.map((one) => tell(one, one.mistakes[i]!));
      expect(told.every(({ type }) => type === 'mistake')).toBe(true);
      const own = told.filter(({ mistake }) => mistake === i);
      expect(own.length, sentence).toBeGreaterThan(SEEDS.length / 10);
    });
  });
});
