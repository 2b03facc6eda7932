import { describe, expect, test } from 'vitest';
import { type Kind, nameKind } from '../../src/language/kind.ts';
import type { Problem } from '../../src/language/problem.ts';
import { createPlaces } from '../../src/sheet/places.ts';
import { readCases, type TextCase } from '../support/case-files.ts';
import { expectSame } from '../support/same-value.ts';
import { makeFormula, type Names, problemOf, readTree } from './made-formula.ts';
import { makeValue } from './made-value.ts';
import { sketchTree } from './sketch-tree.ts';

for (const [file, cases] of readCases('tests/language/cases', '#')) {
  describe(file, () => {
    test.each(cases.map((each) => [each.title, each] as const))('%s', (_, each) => {
      expect(each.expected.length).toBeGreaterThan(0);
      for (const line of each.expected) meet(line, splitNames(each));
    });
  });
}

interface Formula {
  readonly source: string;
  readonly names: Names;
}

/** Lines `where gap = 3 in` behind the formula give its names their values. */
function splitNames({ source }: TextCase): Formula {
  const lines = source.split('\n');
  const names = lines.flatMap((line) => {
    const found = /^where (\S+) = (.*)$/.exec(line);
    return found === null ? [] : [[found[1]!, found[2]!] as const];
  });
  const formula = lines.filter((line) => !line.startsWith('where ')).join('\n');
  return { source: formula, names: Object.fromEntries(names) };
}

/** One expectation: `tree …`, `dimension …`, `value …`, or `error code (line:col) message`. */
function meet(line: string, { source, names }: Formula): void {
  const [, word, rest] = /^(\w+) (.*)$/.exec(line)!;
  if (word === 'tree') expect(sketchTree(readTree(source))).toBe(rest);
  else if (word === 'dimension') expect(nameKind(kindOf(source, names))).toBe(rest);
  else if (word === 'value') meetValue(rest!, { source, names });
  else if (word === 'error') expect(tell(problemOf(source, names), source)).toBe(rest);
  else throw new Error(`cannot expect: ${line}`);
}

function kindOf(source: string, names: Names): Kind {
  const { checked } = makeFormula(source, names);
  if (checked.kind === undefined) throw new Error(checked.problems[0]!.message);
  return checked.kind;
}

function meetValue(text: string, { source, names }: Formula): void {
  const { value, checked, problem } = makeFormula(source, names);
  const made = makeValue(text);
  expect(problem?.message).toBeUndefined();
  expect(nameKind(checked.kind!)).toBe(nameKind(made.kind));
  expectSame(checked.kind!.type === 'truth' ? value === 1 : value, made.value);
}

function tell(problem: Problem | undefined, source: string): string {
  if (problem === undefined) return 'none';
  const { line, column } = createPlaces(source, '')(problem.from);
  return `${problem.code} (${line}:${column}) ${problem.message}`;
}
