import { listMisfits } from '../job/fit.ts';
import { isStarted } from '../job/record.ts';
import { createFrame } from '../sheet/create-frame.ts';
import { solve } from '../sheet/solve.ts';
import type { JobReportCommand } from './command.ts';
import { enterJob, readStoredJob } from './enter-job.ts';
import { describeMisfit } from './job-check.ts';
import { formatReport } from './job-report-page.ts';
import { reportSheet } from './job-report-sheet.ts';
import { loadAll } from './load-all.ts';
import { DONE, type ExitCode, PROBLEM, refuse, type Terminal } from './terminal.ts';

const HINT = 'See npx layshaft help job';

/** `layshaft job report`: writes the record of a job as one page without script. */
export function reportJob({ file, html }: JobReportCommand, terminal: Terminal): ExitCode {
  const opened = readStoredJob(terminal, file);
  if (typeof opened === 'string') return refuse(terminal, opened, HINT);
  const { job, path } = opened;
  const book = loadAll(terminal, job);
  const frame = createFrame(book);
  const refused = enterJob(book, frame, job, path);
  solve(book, frame);
  const amiss = [
    ...opened.problems.map(({ problem }) => problem.message),
    ...listMisfits(job, book).flatMap(describeMisfit),
    ...refused.map(({ problem, cell }) => `${cell?.label ?? ''}: ${problem.message}`),
  ];
  const sheets = book.sheets
    .filter((sheet) => isStarted(job, sheet.name) || Object.hasOwn(job.notes, sheet.name))
    .map((sheet) => reportSheet(job, book, frame, sheet));
  const page = formatReport({ title: job.title, vehicle: job.vehicle, amiss, sheets });
  return write(terminal, html, page) ?? (amiss.length === 0 ? DONE : PROBLEM);
}

/** An exit code where the file cannot be written. */
function write(terminal: Terminal, path: string, text: string): ExitCode | undefined {
  if (path === '-') {
    terminal.write(text);
    return undefined;
  }
  try {
    terminal.saveText(path, text);
    return undefined;
  } catch (error) {
    return refuse(terminal, `cannot write ${path}: ${(error as Error).message}`, HINT);
  }
}
