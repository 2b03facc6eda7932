/** `a, b and c`. */
export function listWords(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

/** A comma or a colon of a name's own breaks the sentence; its figures run into those behind it. */
const BREAKS = /[,:]|\d.*\s|\s.*\d/;

/** A name in a list: quoted where it could not be told from what stands around it. */
export function nameInList(name: string): string {
  return BREAKS.test(name) ? `“${name}”` : name;
}

/** The one name that a sentence is about: in small letters, or quoted with its own. */
export function nameInSentence(name: string): string {
  return BREAKS.test(name) ? `“${name}”` : lowerFirst(name);
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
