import { parseJob } from '../job/read-job.ts';
import { type Job, NEW_JOB } from '../job/record.ts';

type Fetch = (address: string) => Promise<Pick<Response, 'ok' | 'text'>>;

/** The demo job; the sheets' own examples where it cannot be had. */
export async function loadDemo(address: string | undefined, fetch: Fetch): Promise<Job> {
  if (address === undefined) return NEW_JOB;
  try {
    const response = await fetch(address);
    const reading = response.ok ? parseJob(await response.text()) : undefined;
    return reading?.ok ? reading.job : NEW_JOB;
  } catch {
    return NEW_JOB;
  }
}
