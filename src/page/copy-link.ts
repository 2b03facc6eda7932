import { LONGEST_LINK } from '../job/packed-link.ts';
import { h } from './element.ts';

/** The address of this page with what follows a `#` in its place. */
export function addressOf(hash: string): string {
  return `${location.href.replace(/#.*$/, '')}${hash}`;
}

/** Why a link is not offered; undefined where it is short enough to arrive whole. */
export function describeTooLong(link: string, what: string): string | undefined {
  if (link.length <= LONGEST_LINK) return undefined;
  return `As a link ${what} would have ${format(link.length)} characters. Links of more than ${format(LONGEST_LINK)} are cut on the way: hand over the file.`;
}

function format(count: number): string {
  return count.toLocaleString('en-GB');
}

/** A field that holds a link, to be read and copied from. */
export function createLinkField(id: string, link: string): HTMLInputElement {
  return h('input', { id, type: 'text', readonly: true, value: link });
}

/** Copies the link in a field, which is marked for whoever has to do it by key; gives what to say of it. */
export async function copyLink(field: HTMLInputElement): Promise<string> {
  field.select();
  try {
    await navigator.clipboard.writeText(field.value);
    return 'The link is copied.';
  } catch {
    return 'This browser does not let the page copy: the link is marked, copy it by key.';
  }
}
