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
 * All problems of the sheets in order; then, for each expected line about a cell, a check or a
 * chart, what became of it. So a problem that nobody expects fails the case; `none` is nothing at all.
 */
function report(each: TextCase): readonly string[] {
  const made = openCase(each.source);
  const problems = made.book.problems.map((problem) => `problem ${tell(problem)}`);
  const asked = each.expected.filter((line) => /^(?:cell|check|chart) /.test(line));
  const found = [...problems, ...asked.map((line) => answer(made, line))];
  return found.length === 0 ? ['none'] : found;
}

/** Lines `@ file` open a further sheet; lines `<== name = text` type an entry. */
function openCase(source: string): MadeBook {
  const sheets: Record<string, string> = {};
  const entries: Record<string, string> = {};
  let file = 'made.md';
  for (const line of source.split('\n')) {
    const entry = /^<== (\S+) = (.*)$/.exec(line);
    if (line.startsWith('@ ')) file = line.slice(2);
    else if (entry !== null) entries[entry[1]!] = entry[2]!.replace('{100 000 digits}', DIGITS);
    else sheets[file] = `${file in sheets ? `${sheets[file]}\n` : ''}${line}`;
  }
  return makeBook(sheets, entries);
}

const DIGITS = '1'.repeat(100_000);

function tell({ code, place, cell, message }: Problem): string {
  const where = place === undefined ? '?' : formatPlace(place).replace(/^made\.md:/, '');
  return `${code} (${where}${cell === undefined ? '' : ` ${cell}`}) ${message}`;
}

/** `cell NAME …`, `check NAME …` or `chart TITLE …` as it really is. */
function answer(made: MadeBook, line: string): string {
  const [, what, name] = /^(\w+) ("[^"]*"|\S+)/.exec(line)!;
  if (what === 'cell') return `cell ${name} ${tellOutcome(made, name!)}`;
  if (what === 'check') return `check ${name} ${tellCheck(made, name!)}`;
  if (what === 'chart') return `chart ${name} ${tellChart(made, name!)}`;
  throw new Error(`cannot answer: ${line}`);
}

function tellOutcome(made: MadeBook, name: string): string {
  const outcome: Outcome = made.outcome(name);
  if (outcome.state === 'blank') return 'blank';
  if (outcome.state !== 'value') return `${outcome.state} ${tell(outcome.problem)}`;
  const { kind, display } = made.cell(name);
  return showValue(outcome.value, kind!, display)
    .text.replaceAll('\u00a0', ' ')
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
