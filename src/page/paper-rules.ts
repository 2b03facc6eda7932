/** A sheet of paper that the world has in its printers. */
export type PaperFormat = 'A4' | 'letter';

/** Words as CSS takes them between quotes: no text can end the quotes, or the rule that they stand in. */
export function quoteCss(text: string): string {
  const safe = text.replaceAll(/[^\p{L}\p{N} .,:;·–—'()/&+-]/gu, (character) => {
    return `\\${character.codePointAt(0)!.toString(16)} `;
  });
  return `"${safe}"`;
}

/**
 * The rules for the pages of a print: the format, and for each section the words at the head of its
 * pages. What all pages have in common stands in the style sheet for print.
 *
 * @param titles one a section, in their order; a section begins a page
 */
export function paperRules(format: PaperFormat, titles: readonly string[]): string {
  const pages = titles.map(
    (title, i) =>
      `@page ${pageName(i)} { size: ${format} portrait; @top-right { content: ${quoteCss(title)}; } }\n` +
      `.${pageName(i)} { page: ${pageName(i)}; }`,
  );
  return [`@page { size: ${format} portrait; }`, ...pages].join('\n');
}

/** Of a section: its class, and the name of its pages. */
export function pageName(section: number): string {
  return `paper-page-${section}`;
}
