import type { JobIssue } from '../job/read-fields.ts';
import { formatIssue } from '../job/read-job.ts';

const MOST_ISSUES = 8;

/** What could not be read of a job, as one sentence; none where all of it could. */
export function describeIssues(issues: readonly JobIssue[]): readonly string[] {
  if (issues.length === 0) return [];
  const more = issues.length - MOST_ISSUES;
  const told = issues.slice(0, MOST_ISSUES).map(formatIssue).join('; ');
  const rest = more > 0 ? `; and ${more} more` : '';
  return [`Of this job not everything could be read, or can be trusted. ${told}${rest}.`];
}
