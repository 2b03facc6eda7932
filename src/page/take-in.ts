import { record } from '../job/history.ts';
import { parseLink } from '../job/link.ts';
import { inferLinkKind } from '../job/link-form.ts';
import { type JobReading, parseJobFile } from '../job/read-job.ts';
import { type ForeignSheet, type Job, own, withForeignSheet } from '../job/record.ts';
import { parseSheetLink } from '../job/sheet-link.ts';
import { textVersion } from '../job/sheet-version.ts';
import { readSheet } from '../sheet/read-sheet.ts';
import { shorten } from './fit-note.ts';
import type { JobsHost } from './jobs-host.ts';
import { sheetHref } from './link.ts';
import type { LiveDesk } from './live-desk.ts';
import { describeIssues } from './session-words.ts';

/** A sheet of one's own may be so long, in characters. */
const LONGEST_SHEET = 1_000_000;

/** Where something came from, as told to the person. */
type Origin = 'a link' | 'a file' | 'what was pasted';

/** Opens the job in an address as a copy, or takes in the sheet in it, or says why that cannot be. */
export async function takeInLink(host: JobsHost, desk: LiveDesk, hash: string): Promise<void> {
  if (inferLinkKind(hash) !== 'sheet') return openReading(host, parseLink(hash), 'a link');
  const reading = parseSheetLink(hash);
  if (!reading.ok) return host.announce(`${reading.message}. Nothing was changed here.`);
  const { name, text } = reading.sheet;
  await takeInSheet(host, desk, text, `${name}.md`);
}

/** Opens what is in a file: a job, or a sheet of one's own. */
export async function takeInFile(host: JobsHost, desk: LiveDesk, file: File): Promise<void> {
  const text = await file.text();
  if (/\.(md|markdown|txt)$/i.test(file.name)) await takeInSheet(host, desk, text, file.name);
  else await openReading(host, parseJobFile(text), 'a file');
}

/** Opens what was pasted: the text of a job's file, or a link to a job or a sheet. */
export async function takeInText(host: JobsHost, desk: LiveDesk, text: string): Promise<void> {
  const hash = /#\S*/.exec(text.trim())?.[0] ?? '';
  const isAddress = !text.trimStart().startsWith('{') && inferLinkKind(hash) !== undefined;
  if (isAddress) await takeInLink(host, desk, hash);
  else await openReading(host, parseJobFile(text), 'what was pasted');
}

async function openReading(host: JobsHost, reading: JobReading, origin: Origin): Promise<void> {
  if (!reading.ok) return host.announce(`${reading.message}. Nothing was changed here.`);
  const { job, issues } = reading;
  const opened = `Opened from ${origin} as a copy: "${shorten(job.title, 60)}". Your other jobs are as they were.`;
  await host.openCopy(checkForeign(job), [opened, ...describeIssues(issues)]);
}

/** The version of a sheet from outside is worked out here and not taken on trust. */
function checkForeign(job: Job): Job {
  return Object.entries(job.foreign).reduce((checked, [name, sheet]) => {
    const version = textVersion(sheet.text);
    return version === sheet.version
      ? checked
      : withForeignSheet(checked, name, { ...sheet, version });
  }, job);
}

/** Takes a sheet of one's own into the job, where it works beside the others. */
export async function takeInSheet(
  host: JobsHost,
  desk: LiveDesk,
  text: string,
  file: string,
): Promise<void> {
  if (text.length > LONGEST_SHEET) {
    return host.announce(
      `${shorten(file, 60)} has ${text.length} characters; a sheet may have ${LONGEST_SHEET}. Nothing was changed here.`,
    );
  }
  const name = nameForeignSheet(host, desk.job(), file);
  const sheet: ForeignSheet = { version: textVersion(readSheet(text, file).source), text };
  const before = own(desk.job().foreign, name);
  if (before?.version === sheet.version) return host.reopen(desk.history(), sheetHref(name));
  const job = withForeignSheet(desk.job(), name, sheet);
  await host.reopen(record(desk.history(), `take in the sheet ${name}`, job), sheetHref(name));
  host.announce(describeTaken(name, job.title, before !== undefined));
}

function describeTaken(name: string, title: string, isNewer: boolean): string {
  const [place, undone] = isNewer
    ? [', in place of its text before', 'brings that back']
    : ['', 'takes it out again'];
  return `The sheet ${name} was taken into the job "${shorten(title, 60)}"${place}. Undo ${undone}.`;
}

/** A sheet from outside never takes the place of one of the house. */
function nameForeignSheet(host: JobsHost, job: Job, file: string): string {
  const plain = file
    .replace(/\.\w+$/, '')
    .replaceAll(/[^\w-]+/g, '-')
    .slice(0, 60);
  const wanted = plain === '' ? 'sheet' : plain;
  const taken = new Set(host.sheets.map(({ name }) => name));
  const isFree = (name: string): boolean => !taken.has(name) && name !== 'jobs';
  if (isFree(wanted)) return wanted;
  let number = 2;
  while (!isFree(`${wanted}-${number}`) || own(job.foreign, `${wanted}-${number}`)) number += 1;
  return `${wanted}-${number}`;
}

/** The job without a sheet from outside; what was entered on it stays in the job. */
export async function letGoOfSheet(host: JobsHost, desk: LiveDesk, name: string): Promise<void> {
  const job = withForeignSheet(desk.job(), name, undefined);
  await host.reopen(record(desk.history(), `let go of the sheet ${name}`, job), '#/jobs');
}
