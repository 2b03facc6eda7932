import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readTable } from '../support/markdown-table.ts';
import { KINDS, type Sourced } from '../support/published.ts';
import { ROOT, readTree } from '../support/source-tree.ts';

interface Published {
  readonly topic: string;
  readonly checks: readonly Sourced[];
  readonly columns?: readonly Sourced[];
}

const FILES = [...readTree('shared/published', ['.json']).values()].map(
  (text) => JSON.parse(text) as Published,
);
const ALL = FILES.flatMap(listSourced);

test('the table of outside checks counts them as they are', () => {
  const developers = readFileSync(join(ROOT, 'DEVELOPERS.md'), 'utf8');
  const rows = readTable(developers, `| topic | ${KINDS.join(' | ')} |`);
  expect(rows).toEqual(FILES.map(countRow));
});

test('every outside check says where it comes from, and no two share a name', () => {
  const unsourced = ALL.filter(({ source, kind }) => source === '' || !KINDS.includes(kind));
  expect(unsourced).toEqual([]);
  expect(new Set(ALL.map(({ id }) => id)).size).toBe(ALL.length);
});

function listSourced(file: Published): readonly Sourced[] {
  return [...file.checks, ...(file.columns ?? [])];
}

function countRow(file: Published): readonly string[] {
  const kinds = listSourced(file).map(({ kind }) => kind);
  return [file.topic, ...KINDS.map((kind) => `${kinds.filter((k) => k === kind).length}`)];
}
