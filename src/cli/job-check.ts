import { listMisfits, type Misfit } from '../job/fit.ts';
import { createFrame } from '../sheet/create-frame.ts';
import type { JobCheckCommand } from './command.ts';
import { amiss, enterJob, type OpenedJob, readStoredJob } from './enter-job.ts';
import { loadAll } from './load-all.ts';
import { plainBlanks } from './plain-blanks.ts';
import { formatProblem, type ProblemRecord, recordProblem } from './problem-record.ts';
import { DONE, type ExitCode, PROBLEM, refuse, type Terminal } from './terminal.ts';

/** `layshaft job check`: says whose job a file holds, and what in it is amiss. */
export function checkJob({ file, json }: JobCheckCommand, terminal: Terminal): ExitCode {
  const opened = readStoredJob(terminal, file);
  if (typeof opened === 'string') return refuse(terminal, opened, 'See npx layshaft help job');
  const problems = findProblems(terminal, opened);
  const { title, vehicle } = opened.job;
  const text = json
    ? `${JSON.stringify({ title, vehicle, problems }, null, 2)}\n`
    : say(opened, problems);
  terminal.write(plainBlanks(text));
  return problems.length === 0 ? DONE : PROBLEM;
}

function findProblems(terminal: Terminal, opened: OpenedJob): readonly ProblemRecord[] {
  const { job, path } = opened;
  const book = loadAll(terminal, job);
  const misfits = listMisfits(job, book).flatMap((misfit) =>
    describeMisfit(misfit).map((message) => amiss(path, message)),
  );
  const entries = enterJob(book, createFrame(book), job, path);
  return [
    ...opened.problems.map(({ problem }) => recordProblem(problem)),
    ...misfits.map((problem) => recordProblem(problem)),
    ...entries.map(({ problem }) => recordProblem(problem)),
  ];
}

/** How a job stands to a sheet that is not as it was, a line each. */
export function describeMisfit({ sheet, isGone, isChanged, strays }: Misfit): readonly string[] {
  const changed = isGone ? ['is not here'] : isChanged ? ['has changed since'] : [];
  const lost = strays.map(
    ({ what, name, text }) => `has no place for the ${what} ${name}: ${text}`,
  );
  return [...changed, ...lost].map((words) => `sheet ${sheet} ${words}`);
}

function say({ job }: OpenedJob, problems: readonly ProblemRecord[]): string {
  const name = job.vehicle === '' ? job.title : `${job.vehicle}: ${job.title}`;
  const entries = Object.values(job.entries).flatMap(Object.keys).length;
  const steps = Object.values(job.ticks).flatMap(Object.keys).length;
  const counts = `${count(entries, 'entry', 'entries')}, ${count(steps, 'step', 'steps')} ticked`;
  const found =
    problems.length === 0 ? 'no problem' : count(problems.length, 'problem', 'problems');
  return `${[...problems.map(formatProblem), name, `${counts}, ${found}`].join('\n')}\n`;
}

function count(number: number, one: string, many: string): string {
  return `${number} ${number === 1 ? one : many}`;
}
