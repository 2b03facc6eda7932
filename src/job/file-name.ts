import type { Job } from './record.ts';

const LONGEST = 60;

/** A file name that every system takes: `quarry-lane-estate.job.json`. */
export function nameJobFile({ title, vehicle }: Pick<Job, 'title' | 'vehicle'>): string {
  const words = `${vehicle} ${title}`.normalize('NFKD').toLowerCase();
  const plain = words.replaceAll(/[^a-z0-9]+/g, '-').slice(0, LONGEST);
  return `${plain.replaceAll(/^-+|-+$/g, '') || 'job'}.job.json`;
}
