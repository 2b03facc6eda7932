/** How an address begins that holds a job: `#job=1.LENGTH.CHECK.PAYLOAD`. */
export const LINK_HEAD = '#job=';

/** True for an address that holds a job, or the beginning of one that does. */
export function isLink(hash: string): boolean {
  return hash.startsWith(LINK_HEAD) || (hash.length > 1 && LINK_HEAD.startsWith(hash));
}
