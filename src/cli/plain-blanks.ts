/**
 * A text with ordinary blanks in place of those that do not break: on a page they keep number and
 * unit together, in a terminal they only keep people from finding what they search for.
 */
export function plainBlanks(text: string): string {
  return text.replaceAll(/[\u00a0\u2007\u202f]/g, ' ');
}
