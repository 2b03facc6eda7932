import type { Entry } from '../sheet/reading.ts';
import { isRecord, isShallow, isText } from './json.ts';
import type { Attempt, ByName, Caption, ForeignSheet, Tick, Variant } from './record.ts';

/** Something of a job's file that could not be read, and was left out. */
export interface JobIssue {
  /** Names from the outside in: `entries`, `20-gearing`, `redline`. */
  readonly path: readonly string[];
  readonly message: string;
}

/** The values of a record two names deep that are what they should be. Mutates `issues`: the others. */
export function readNested<T>(
  data: unknown,
  path: readonly string[],
  isLeaf: (leaf: unknown) => leaf is T,
  issues: JobIssue[],
): ByName<ByName<T>> {
  const outer = readFlat(data, path, isRecord, issues);
  const inner = Object.entries(outer).map(
    ([sheet, names]) => [sheet, readFlat(names, [...path, sheet], isLeaf, issues)] as const,
  );
  return Object.fromEntries(inner.filter(([, names]) => Object.keys(names).length > 0));
}

/** The same for a record one name deep. */
export function readFlat<T>(
  data: unknown,
  path: readonly string[],
  isLeaf: (leaf: unknown) => leaf is T,
  issues: JobIssue[],
): ByName<T> {
  if (data === undefined) return {};
  if (!isRecord(data)) {
    issues.push({ path, message: 'should be a record' });
    return {};
  }
  const whole = Object.entries(data).filter(([name, leaf]) => {
    if (isLeaf(leaf) && isShallow(leaf)) return true;
    issues.push({ path: [...path, name], message: 'cannot be read' });
    return false;
  });
  return Object.fromEntries(whole) as ByName<T>;
}

/** The items of a list that are what they should be. Mutates `issues`: the others. */
export function readItems<T>(
  data: unknown,
  path: readonly string[],
  isItem: (item: unknown) => item is T,
  issues: JobIssue[],
): readonly T[] {
  if (data === undefined) return [];
  if (!Array.isArray(data)) {
    issues.push({ path, message: 'should be a list' });
    return [];
  }
  return data.filter((item, i) => {
    if (isItem(item) && isShallow(item)) return true;
    issues.push({ path: [...path, String(i + 1)], message: 'cannot be read' });
    return false;
  });
}

export function readText(
  data: unknown,
  path: readonly string[],
  otherwise: string,
  issues: JobIssue[],
): string {
  if (data === undefined) return otherwise;
  if (isText(data)) return data;
  issues.push({ path, message: 'should be a text' });
  return otherwise;
}

export function isEntry(data: unknown): data is Entry {
  return isRecord(data) && isText(data.text) && isTextOrNone(data.unit);
}

export function isTick(data: unknown): data is Tick {
  return isRecord(data) && isText(data.on) && isTextOrNone(data.by);
}

export function isCaption(data: unknown): data is Caption {
  return isRecord(data) && isTextOrNone(data.caption) && isTextOrNone(data.alt);
}

export function isForeignSheet(data: unknown): data is ForeignSheet {
  return isRecord(data) && isText(data.version) && isText(data.text);
}

export function isAttempts(data: unknown): data is readonly Attempt[] {
  return Array.isArray(data) && data.every(isAttempt);
}

function isAttempt(data: unknown): data is Attempt {
  if (!isRecord(data)) return false;
  const { seed, typed, told, mistake = 0, seconds } = data;
  const numbers = [seed, mistake, seconds].every((number) => typeof number === 'number');
  return numbers && isText(typed) && isText(told);
}

export function isVariant(data: unknown): data is Variant {
  if (!isRecord(data)) return false;
  const { name, base, entries } = data;
  if (!isText(name) || !isTextOrNone(base) || !isRecord(entries)) return false;
  const sheets = Object.values(entries);
  return sheets.every((sheet) => isRecord(sheet) && Object.values(sheet).every(isText));
}

function isTextOrNone(data: unknown): boolean {
  return data === undefined || isText(data);
}
