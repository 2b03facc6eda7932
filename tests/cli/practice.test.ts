import { expect, test } from 'vitest';
import { parseArguments } from '../../src/cli/parse-arguments.ts';
import { practice } from '../../src/cli/practice.ts';
import { SHEETS } from './made-sheets.ts';
import { makeTerminal } from './made-terminal.ts';

const F = '```';
const GAP = `# Gap

${F}given
deep = 3 in "Deep" from 2 in to 4 in to 0.001
high = 1 in "High" from 0.5 in to 1.5 in to 0.001
${F}

${F}work
gap = deep - high "Gap" as in to 0.001
${F}

${F}practice "The gap"
ask gap within 0.001 in "How wide?"
mistake deep + high "Added."
${F}
`;

function run(...typed: readonly string[]) {
  const terminal = makeTerminal({ ...SHEETS, 'notebooks/gap.md': GAP });
  const command = parseArguments(['practice', ...typed]);
  if (command.command !== 'practice') throw new Error(JSON.stringify(command));
  const code = practice(command, terminal);
  return { code, out: terminal.out(), errors: terminal.errors() };
}

interface Printed {
  readonly seed: number;
  readonly problems: readonly {
    readonly numbers: readonly { readonly value: number }[];
    readonly answer: { readonly value: number; readonly unit: string };
    readonly mistakes: readonly { readonly value: number }[];
  }[];
}

function record(...typed: readonly string[]): Printed {
  return JSON.parse(run(...typed, '--json').out);
}

test('problems come first and the answers after them, under the seed', () => {
  const { code, out } = run('gap', '--seed', '7', '--count', '2');
  expect(code).toBe(0);
  expect(out).toMatch(/^Gap: practice, seed 7\n\n1\. The gap\n {3}Deep: [\d.]+ in\n/);
  expect(out).toMatch(/\nAnswers, seed 7\n\n1\. [\d.]+ in \(± 0\.001 in\)\n2\. /);
  expect(out.indexOf('Answers')).toBeGreaterThan(out.lastIndexOf('How wide?'));
});

test('the answer follows from the numbers, and each mistake from its own', () => {
  for (const { numbers, answer, mistakes } of record('gap', '--seed', '3').problems) {
    const [deep, high] = numbers.map(({ value }) => value) as [number, number];
    expect(answer.value).toBeCloseTo(deep - high, 9);
    expect(mistakes[0]!.value).toBeCloseTo(deep + high, 9);
    expect(answer.unit).toBe('in');
  }
});

test('the same seed prints the same sheet, another another', () => {
  expect(run('gap', '--seed', '7').out).toBe(run('gap', '--seed', '7').out);
  expect(run('gap', '--seed', '7').out).not.toBe(run('gap', '--seed', '8').out);
});

test('a word is a seed as well', () => {
  expect(record('gap', '--seed', 'monday').seed).toBe(record('gap', '--seed', 'monday').seed);
  expect(record('gap', '--seed', 'monday').seed).not.toBe(record('gap', '--seed', 'tuesday').seed);
});

test('the answers may be left out', () => {
  expect(run('gap', '--seed', '7', '--no-answers').out).not.toContain('Answers');
});

test('a sheet that asks nothing says so', () => {
  const { code, errors } = run('10-shaft', '--seed', '7');
  expect(code).toBe(1);
  expect(errors).toMatch(/sheet 10-shaft asks no practice question/);
});

test('a sheet that is not there is wrong use', () => {
  expect(run('gpa', '--seed', '7')).toMatchObject({
    code: 2,
    errors: expect.stringMatching(/no sheet "gpa"; did you mean gap/),
  });
});
