import { describe, expect, test } from 'vitest';
import type { Problem } from '../../src/language/problem.ts';
import type { Check } from '../../src/sheet/cell.ts';
import type { Outcome } from '../../src/sheet/outcome.ts';
import { formatPlace } from '../../src/sheet/places.ts';
import { showValue } from '../../src/sheet/show.ts';
import { sweepChart } from '../../src/sheet/sweep.ts';
import { verdictOf } from '../../src/sheet/verdict.ts';
import { readCases, type TextCase } from '../support/case-files.ts';
import { type MadeBook, makeBook } from './made-book.ts';

for (const [file, cases] of readCases('tests/sheet/cases', '===')) {
  describe(file, () => {
    test.each(cases.map((each) => [each.title, each] as const))('%s', (_, each) => {
      expect(report(each)).toEqual(each.expected);
    });
  });
}

/**
 * All problems of the sheets in order; then, for each expected line about a cell, a check, a chart
 * and so on, what became of it. So a problem that nobody expects fails the case; `none` is nothing at all.
 */
function report(each: TextCase): readonly string[] {
  const made = openCase(each.source);
  const problems = made.book.problems.map((problem) => `problem ${tell(problem)}`);
  const asked = each.expected.filter((line) => !/^(?:problem|none)\b/.test(line));
  const found = [...problems, ...asked.map((line) => answer(made, line))];
  return found.length === 0 ? ['none'] : found;
}

/**
 * Lines `@ file` open a further sheet; lines `<== name = text` type an entry; `{1000 × text}` is that
 * text so many times, ⏎ being the end of a line.
 */
function openCase(source: string): MadeBook {
  const sheets: Record<string, string> = {};
  const entries: Record<string, string> = {};
  let file = 'made.md';
  for (const line of repeatParts(source).split('\n')) {
    const entry = /^<== (\S+) = (.*)$/.exec(line);
    if (line.startsWith('@ ')) file = line.slice(2);
    else if (entry !== null) entries[entry[1]!] = entry[2]!;
    else sheets[file] = `${file in sheets ? `${sheets[file]}\n` : ''}${line}`;
  }
  return makeBook(sheets, entries);
}

function repeatParts(source: string): string {
  return source.replaceAll(/\{(\d+) × ([^}]*)\}/g, (_, times, part) =>
    part.replaceAll('⏎', '\n').repeat(Number(times)),
  );
}

function tell({ code, place, cell, message }: Problem): string {
  const where = place === undefined ? '?' : formatPlace(place).replace(/^made\.md:/, '');
  return `${code} (${where}${cell === undefined ? '' : ` ${cell}`}) ${message}`;
}

/** `cell NAME …`, `check NAME …`, `chart TITLE …` and so on, as it really is. */
function answer(made: MadeBook, line: string): string {
  const [, what, name] = /^(\w+) ("[^"]*"|\S+)/.exec(line)!;
  if (what === 'cell') return `cell ${name} ${tellOutcome(made, name!)}`;
  if (what === 'check') return `check ${name} ${tellCheck(made, name!)}`;
  if (what === 'chart') return `chart ${name} ${tellChart(made, name!)}`;
  if (what === 'find') return `find ${name} ${tellFind(made, name!)}`;
  if (what === 'practice') return `practice ${name} ${tellPractice(made, name!)}`;
  if (what === 'drawing') return `drawing ${name} ${tellDrawing(made, name!)}`;
  throw new Error(`cannot answer: ${line}`);
}

function tellOutcome(made: MadeBook, name: string): string {
  const outcome: Outcome = made.outcome(name);
  if (outcome.state === 'blank') return 'blank';
  if (outcome.state !== 'value') return `${outcome.state} ${tell(outcome.problem)}`;
  const { kind, display } = made.cell(name);
  return showValue(outcome.value, kind!, display)
    .text.replaceAll(/[\u00a0\u202f]/g, ' ')
    .replaceAll('\n', '⏎');
}

function tellCheck({ book, frame }: MadeBook, name: string): string {
  const check = book.checks.find(({ statement }) => statement.name === name) as Check;
  const verdict = verdictOf(book, frame, check);
  const side = verdict.verdict === 'fail' ? ` ${verdict.side}` : '';
  return `${verdict.verdict}${side}`;
}

function tellChart({ book, frame }: MadeBook, title: string): string {
  const chart = book.charts.find(({ statement }) => `"${statement.title}"` === title)!;
  const data = sweepChart(book, frame, chart.statement, chart.sheet);
  return 'code' in data ? tell(data) : `${data.series.length} lines`;
}

function tellFind({ book }: MadeBook, given: string): string {
  const { linked, problem } = book.finds.find(({ statement }) => statement.given.name === given)!;
  return linked === undefined ? tell(problem!) : 'linked';
}

function tellPractice({ book }: MadeBook, title: string): string {
  const found = book.practices.find(({ statement }) => `"${statement.title}"` === title)!;
  if (found.linked === undefined) return tell(found.problem!);
  return `varies ${found.linked.vary.map(({ given }) => book.cells[given]!.name).join(', ')}`;
}

function tellDrawing({ book }: MadeBook, title: string): string {
  const found = book.drawings.find(({ statement }) => `"${statement.title}"` === title)!;
  if (found.linked === undefined) return tell(found.problem!);
  return found.linked.slots.map(({ slot }) => slot.name).join(', ');
}
