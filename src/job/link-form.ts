/** What a link can hold. */
export type LinkKind = 'job' | 'sheet';

const KINDS: readonly LinkKind[] = ['job', 'sheet'];

/** How an address begins that holds something: `#job=1.LENGTH.CHECK.PAYLOAD`. */
export function headOfLink(kind: LinkKind): string {
  return `#${kind}=`;
}

/** True for an address that holds a job or a sheet, or the beginning of one that does. */
export function isLink(hash: string): boolean {
  return inferLinkKind(hash) !== undefined;
}

/** What an address holds, as far as it goes: `#shee` was to be a sheet. */
export function inferLinkKind(hash: string): LinkKind | undefined {
  return KINDS.find((kind) => {
    const head = headOfLink(kind);
    return hash.startsWith(head) || (hash.length > 1 && head.startsWith(hash));
  });
}
