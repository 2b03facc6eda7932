/** Text with its character references (`&amp;`, `&#176;`, `&frac12;`) read as CommonMark asks. */
export function decodeEntities(text: string): string {
  return text.includes('&') ? text.replace(REFERENCE, decode) : text;
}

const REFERENCE = /&(?:#\d{1,7}|#[xX][0-9a-fA-F]{1,6}|[a-zA-Z][a-zA-Z0-9]{1,31});/g;

/** The browser has the table of names. The reference holds letters and digits only, so no tag can come of it. */
function decode(reference: string): string {
  const parsed = new DOMParser().parseFromString(reference, 'text/html');
  return parsed.documentElement.textContent ?? reference;
}
