/** `a, b and c`. */
export function listWords(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

/** A name within a sentence: quoted where a comma of its own would break a list. */
export function nameInList(name: string): string {
  return name.includes(',') ? `“${name}”` : name;
}

/** A label within a sentence; an abbreviation keeps its capitals. */
export function lowerFirst(text: string): string {
  return /^\p{Lu}(?!\p{Lu})/u.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}

export function upperFirst(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** `Redline, 5500 rpm`; either part may be empty. */
export function joinWords(label: string, value: string): string {
  return [label, value].filter((part) => part !== '').join(', ');
}
