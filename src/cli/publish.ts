import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { DOMParser } from 'linkedom';
import { type BundleTools, makeBundle } from '../export/bundle.ts';
import type { BundleOptions } from '../export/bundle-contents.ts';
import { createRasteriser } from '../export/rasterise.ts';
import { FONT_PATHS, loadTypeface } from '../export/tools.ts';
import { formatJobFile, parseJobFile } from '../job/read-job.ts';
import { entryIn, type Job, NEW_JOB, own } from '../job/record.ts';
import { workJob } from '../job/work-columns.ts';
import { type Book, linkBook } from '../sheet/book.ts';
import { readSheet } from '../sheet/read-sheet.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { createStanding } from '../sheet/standing.ts';
import type { PublishCommand } from './command.ts';
import { findSheet, listSheets } from './find-sheet.ts';
import { plainBlanks } from './plain-blanks.ts';
import { DONE, type ExitCode, PROBLEM, refuse, type Terminal } from './terminal.ts';

const HINT = 'See npx layshaft help publish';

/** `layshaft publish`: figures, tables, captions and sources of sheets in one zip. */
export async function publish(command: PublishCommand, terminal: Terminal): Promise<ExitCode> {
  const opened = openSheets(terminal);
  const names = command.sheets.map((name) => name.replace(/^.*\/|\.md$/g, ''));
  const missing = command.sheets.find((_, i) => !opened.some(({ name }) => name === names[i]));
  if (missing !== undefined) {
    const found = findSheet(terminal, missing);
    const why =
      found.path === undefined ? found.sentence : `"${missing}" is not among the sheets of the job`;
    return refuse(terminal, why, HINT);
  }
  const job = readJob(command, terminal);
  if (typeof job === 'string') return refuse(terminal, job, HINT);
  const book = linkBook(opened);
  const { frame, faults } = workJob(book, job);
  const chosen = opened.filter((sheet) =>
    names.length === 0 ? isOfJob(sheet) : names.includes(sheet.name),
  );
  const standing = createStanding(book, frame, {
    system: job.system,
    isEntered: ({ sheet, name }) => entryIn(job, sheet, name) !== undefined,
  });
  const bytes = await makeBundle(standing, chosen, optionsOf(command, job), await loadTools());
  return save(command.zip, bytes, [...listProblems(book), ...faults], terminal);
}

function openSheets(terminal: Terminal): readonly Sheet[] {
  return listSheets(terminal).flatMap((name) => {
    const file = findSheet(terminal, name);
    return file.path === undefined ? [] : [readSheet(file.text, file.path)];
  });
}

/** The guide to writing sheets is no part of any job. */
function isOfJob({ number }: Sheet): boolean {
  return number !== undefined && number > 0;
}

function readJob({ job: path }: PublishCommand, terminal: Terminal): Job | string {
  if (path === undefined) return NEW_JOB;
  const text = terminal.readText(path);
  if (text === undefined) return `there is no file "${path}"`;
  const reading = parseJobFile(text);
  return reading.ok ? reading.job : `${path}: ${reading.message}`;
}

function optionsOf(command: PublishCommand, job: Job): BundleOptions {
  const { width, dotsPerInch, colour, lettering, figureFormats, tableFormats } = command;
  return {
    width,
    dotsPerInch,
    colour,
    lettering,
    figureFormats,
    tableFormats,
    title: job.vehicle === '' ? job.title : `${job.vehicle}: ${job.title}`,
    credit: job.worker,
    wordsOf: ({ sheet, id }) => own(own(job.captions, sheet) ?? {}, id) ?? {},
    ...(command.job === undefined ? {} : { job: formatJobFile(job) }),
  };
}

async function loadTools(): Promise<BundleTools> {
  const { resolve } = createRequire(import.meta.url);
  const read = async (path: string): Promise<ArrayBuffer> => {
    const file = await readFile(resolve(path));
    return file.buffer.slice(file.byteOffset, file.byteOffset + file.byteLength) as ArrayBuffer;
  };
  const document = new DOMParser().parseFromString('<svg/>', 'image/svg+xml');
  return {
    document: document as unknown as Document,
    typeface: await loadTypeface((name) => read(FONT_PATHS[name])),
    rasterise: await createRasteriser(() => read('@resvg/resvg-wasm/index_bg.wasm')),
  };
}

function listProblems({ problems }: Book): readonly string[] {
  return problems.map(({ place, message }) =>
    place === undefined ? message : `${place.file}:${place.line}:${place.column}: ${message}`,
  );
}

/** What could be drawn is written; what is wrong is told, and the exit code says so. */
function save(
  path: string,
  bytes: Uint8Array,
  problems: readonly string[],
  terminal: Terminal,
): ExitCode {
  try {
    terminal.saveBytes(path, bytes);
  } catch (error) {
    return refuse(terminal, `cannot write ${path}: ${(error as Error).message}`, HINT);
  }
  for (const problem of problems) terminal.complain(plainBlanks(`${problem}\n`));
  return problems.length === 0 ? DONE : PROBLEM;
}
