import { formatJobFile } from '../../src/job/read-job.ts';
import {
  type Job,
  NEW_JOB,
  withEntry,
  withNote,
  withSheetVersion,
  withTick,
} from '../../src/job/record.ts';
import { textVersion } from '../../src/job/sheet-version.ts';
import { SHAFT, SHEETS } from './made-sheets.ts';

const STEPS = '\n```steps "Before it goes in"\n- Cleaned\n- Oiled\n```\n';

/** The made-up sheets, one of them with steps. */
export const WITH_STEPS = { ...SHEETS, 'notebooks/10-shaft.md': SHAFT + STEPS };

/** A job that fits them. */
export const MADE_JOB: Job = makeJob();

function makeJob(): Job {
  const named = { ...NEW_JOB, title: 'Five-speed', vehicle: 'Quarry Lane estate', worker: 'Ann' };
  let job = withEntry(named, '10-shaft', 'ratio', { text: '4' });
  job = withEntry(job, '10-shaft', 'spin', { text: '3000', unit: 'rpm' });
  job = withTick(job, '10-shaft', 'cleaned', '2026-03-14');
  job = withNote(job, '10-shaft', 'given spin', 'By <stroboscope> & ear');
  return withSheetVersion(job, '10-shaft', textVersion(SHAFT + STEPS));
}

export const MADE_FILES = { ...WITH_STEPS, 'a.job.json': formatJobFile(MADE_JOB) };
