import { expect, test } from 'vitest';
import type { Book } from '../../src/sheet/book.ts';
import type { LinkedPractice, Practice } from '../../src/sheet/cell.ts';
import { drawProblem, type PracticeProblem } from '../../src/sheet/practice/draw-problem.ts';
import { type Feedback, judgeAnswer } from '../../src/sheet/practice/judge-answer.ts';
import { formatUnit } from '../../src/units/format-unit.ts';
import { work } from './notebooks.ts';

/** A mistake of a question: its title, words of the sentence that it gets. */
export type Mistake = readonly [title: string, words: string];

const SEEDS = [1, 2, 3, 4, 5, 6];

/**
 * For each question of a sheet: numbers can be dealt, the right answer is right, and each mistake is
 * told by its own sentence. The rows name every mistake of every question in the order of the sheet.
 */
export function testPractice(book: Book, sheet: string, rows: readonly Mistake[]): void {
  const practices = book.practices.filter((practice) => practice.sheet === sheet);
  const { frame } = work(book, sheet);
  const deal = (practice: Practice) =>
    SEEDS.map((seed) => drawProblem(book, frame, practice.linked!, seed)!);

  test.each(practices.map((practice) => [practice.statement.title, practice] as const))(
    '%s: the right answer is right whatever is dealt',
    (_, practice) => {
      for (const problem of deal(practice)) {
        expect(judge(book, practice.linked!, problem, problem.answer).type).toBe('right');
      }
    },
  );

  test.each(practices.map((practice) => [practice.statement.title, practice] as const))(
    '%s: seeds that follow one another deal numbers far apart',
    (_, practice) => {
      const dealt = deal(practice).map(({ numbers }) => numbers);
      practice.linked!.vary.forEach(({ from, to }, i) => {
        const values = dealt.map((numbers) => numbers[i]!.value);
        expect(Math.max(...values) - Math.min(...values)).toBeGreaterThan((to - from) / 4);
      });
    },
  );

  test.each(rows)('%s: %s', (title, words) => {
    const practice = practices.find(({ statement }) => statement.title === title)!;
    const place = practice.statement.mistakes.findIndex(({ sentence }) => sentence.includes(words));
    expect(place).toBeGreaterThanOrEqual(0);
    const told = deal(practice).map((problem) =>
      judge(book, practice.linked!, problem, problem.mistakes[place]!),
    );
    const { sentence } = practice.statement.mistakes[place]!;
    expect(told).toContainEqual({ type: 'mistake', mistake: place, sentence });
    // With some numbers two mistakes lead to the same figure; none may ever pass as right.
    expect(told.map(({ type }) => type)).not.toContain('right');
  });

  test('every mistake of every question has been made', () => {
    const all = practices.flatMap(({ statement }) => statement.mistakes.map(() => statement.title));
    expect(rows.map(([title]) => title)).toEqual(all);
  });
}

/** What a typed figure in the unit of the answer is told. */
function judge(
  book: Book,
  linked: LinkedPractice,
  problem: PracticeProblem,
  value: number,
): Feedback {
  const { kind, display } = book.cells[linked.asked]!;
  const { unit } = display;
  const symbol = unit === undefined ? '' : ` ${formatUnit(unit)}`;
  const typed = `${(value / (unit?.factor ?? 1)).toFixed(9)}${symbol}`;
  return judgeAnswer(typed, problem, linked, kind!, unit);
}
