import type { CheckCommand } from './command.ts';
import { findSheet, type SheetFile } from './find-sheet.ts';
import { loadBook } from './load-book.ts';
import { plainBlanks } from './plain-blanks.ts';
import {
  formatProblem,
  type ProblemRecord,
  recordProblem,
  uniqueProblems,
} from './problem-record.ts';
import { DONE, type ExitCode, PROBLEM, refuse, type Terminal } from './terminal.ts';

/** `layshaft check`: reads sheets and lists what is wrong with them. */
export function check({ sheets, json }: CheckCommand, terminal: Terminal): ExitCode {
  const files: SheetFile[] = [];
  for (const named of sheets) {
    const file = findSheet(terminal, named);
    if (file.path === undefined)
      return refuse(terminal, file.sentence, 'See npx layshaft help check');
    files.push(file);
  }
  const problems = findProblems(terminal, files);
  const text = json ? `${JSON.stringify(problems, null, 2)}\n` : say(problems, files.length);
  terminal.write(plainBlanks(text));
  return problems.length === 0 ? DONE : PROBLEM;
}

/** Each problem once, though two of the sheets may lean on the same third. */
function findProblems(terminal: Terminal, files: readonly SheetFile[]): readonly ProblemRecord[] {
  const problems = files.flatMap((file) => loadBook(terminal, file).book.problems);
  return uniqueProblems(problems.map((problem) => recordProblem(problem)));
}

function say(problems: readonly ProblemRecord[], sheets: number): string {
  const what = sheets === 1 ? '1 sheet' : `${sheets} sheets`;
  if (problems.length === 0) return `${what} read, no problem\n`;
  const count = problems.length === 1 ? '1 problem' : `${problems.length} problems`;
  return `${problems.map(formatProblem).join('\n')}\n${what} read, ${count}\n`;
}
