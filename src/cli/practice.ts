import type { Cell } from '../sheet/cell.ts';
import {
  drawSheet,
  type PracticeSheet,
  readSeed,
  type SheetProblem,
} from '../sheet/practice/practice-sheet.ts';
import type { Unit } from '../units/unit.ts';
import type { PracticeCommand } from './command.ts';
import { complainRecords, openSheet, sentenceRecord } from './open-sheet.ts';
import { plainBlanks } from './plain-blanks.ts';
import { unitOf } from './record-results.ts';
import { DONE, type ExitCode, type Terminal } from './terminal.ts';

/** `layshaft practice`: prints problems with fresh numbers, and their answers. */
export function practice(command: PracticeCommand, terminal: Terminal): ExitCode {
  const open = openSheet(command, [], terminal);
  if (typeof open === 'number') return open;
  const { book, frame, sheet } = open;
  const options = { seed: readSeed(command.seed), count: command.count };
  const drawn = drawSheet(book, frame, sheet.name, options);
  if (drawn.problems.length === 0) {
    const why = `sheet ${sheet.name} asks no practice question that numbers with an answer can be drawn for`;
    return complainRecords([sentenceRecord('no-practice', why)], terminal);
  }
  const record = {
    sheet: sheet.name,
    seed: drawn.seed,
    problems: drawn.problems.map((one) => recordOne(one, (index) => book.cells[index]!)),
  };
  const text = command.json
    ? `${JSON.stringify(record, null, 2)}\n`
    : formatSheet(sheet.title, drawn, command.answers);
  terminal.write(plainBlanks(text));
  return DONE;
}

function recordOne(one: SheetProblem, cellOf: (index: number) => Cell) {
  const { problem, practice: asked } = one;
  const unit = unitOf(one.asked);
  const inUnit = (value: number, of: Unit | undefined) => value / (of?.factor ?? 1);
  return {
    title: one.title,
    question: one.question,
    seed: problem.seed,
    numbers: one.numbers.map(({ name, label, text }, i) => {
      const { given, value } = problem.numbers[i]!;
      const own = unitOf(cellOf(given));
      return { name, label, text, value: inUnit(value, own), unit: own?.symbol ?? '' };
    }),
    answer: {
      value: inUnit(problem.answer, unit),
      unit: unit?.symbol ?? '',
      text: one.answer,
      within: inUnit(problem.within, unit),
    },
    mistakes: problem.mistakes.map((value, i) => ({
      value: Number.isFinite(value) ? inUnit(value, unit) : null,
      sentence: asked.statement.mistakes[i]!.sentence,
    })),
  };
}

/** Problems first, the key after them under a line of its own. */
function formatSheet(title: string, { seed, problems }: PracticeSheet, answers: boolean): string {
  const asked = problems.map((one, i) =>
    [
      `${i + 1}. ${one.title}`,
      ...one.numbers.map(({ label, text }) => `   ${label}: ${text}`),
      `   ${one.question}`,
    ].join('\n'),
  );
  const key = problems.map((one, i) => `${i + 1}. ${one.answer} (${one.within})`);
  const head = `${title}: practice, seed ${seed}`;
  const behind = answers ? ['', `Answers, seed ${seed}`, '', ...key] : [];
  return `${[head, '', asked.join('\n\n'), ...behind].join('\n')}\n`;
}
