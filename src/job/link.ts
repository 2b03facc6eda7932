import { packLink, unpackLink } from './packed-link.ts';
import { formatJob, type JobReading, parseJob } from './read-job.ts';
import type { Job } from './record.ts';

/** The part of an address that holds the whole job. */
export function formatLink(job: Job): string {
  return packLink('job', formatJob(job));
}

/** The job in an address, whole or not at all. */
export function parseLink(hash: string): JobReading {
  const unpacked = unpackLink('job', hash);
  return unpacked.ok ? parseJob(unpacked.text) : unpacked;
}
