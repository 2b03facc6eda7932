const LISTS_OF_IDS: ReadonlySet<string> = new Set([
  'for',
  'headers',
  'aria-labelledby',
  'aria-describedby',
  'aria-controls',
  'aria-details',
]);

/**
 * Mutates the element and all in it: each id, and whatever refers to one, begins with the prefix. Two
 * sheets that are shown at a time would share ids otherwise, and one drawing take its hatching from another.
 */
export function prefixIds(root: Element, prefix: string): void {
  for (const element of [root, ...root.querySelectorAll('*')]) {
    for (const { name, value } of [...element.attributes]) {
      const next = prefixIn(name, value, prefix);
      if (next !== value) element.setAttribute(name, next);
    }
  }
}

function prefixIn(name: string, value: string, prefix: string): string {
  if (name === 'id') return prefix + value;
  if (LISTS_OF_IDS.has(name)) return value.replaceAll(/\S+/g, (id) => prefix + id);
  // An address that begins with "#/" leads to a sheet, and to no id.
  if (name.endsWith('href')) return value.replace(/^#(?!\/|$)/, `#${prefix}`);
  return value.replaceAll(/url\((["']?)#/g, (_, quote) => `url(${quote}#${prefix}`);
}
