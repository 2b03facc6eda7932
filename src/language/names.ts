import { parseUnit } from '../units/parse-unit.ts';

/** Words of the language itself. */
const WORDS: ReadonlySet<string> = new Set([
  'if',
  'then',
  'else',
  'and',
  'or',
  'not',
  'otherwise',
  'true',
  'false',
  'pi',
  'pick',
  'blank',
  'list',
  'between',
]);

const NAME = /^[a-z][a-z0-9_]*$/;

/** True for a name as people may write one: lower-case letters, digits, underscores. */
export function isName(text: string): boolean {
  return NAME.test(text);
}

/** What else a word already means, so that it cannot name a value; undefined when it is free. */
export function maybeRole(word: string): string | undefined {
  if (WORDS.has(word)) return 'a word of the language';
  if (parseUnit(word) !== undefined) return 'a unit';
  return undefined;
}

/** A free and well-formed name made from any text: `Gap Left` gives `gap_left`. */
export function inferName(text: string): string {
  const name = text
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '_')
    .replaceAll(/^[_0-9]+|_+$/g, '');
  return name === '' ? 'a_name' : name;
}
