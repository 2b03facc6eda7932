import { expect, test } from 'vitest';
import { listResults, recordResults } from '../../src/cli/record-results.ts';
import type { ResultRecord } from '../../src/cli/solve-record.ts';
import { linkBook } from '../../src/sheet/book.ts';
import { createFrame } from '../../src/sheet/create-frame.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import { solve } from '../../src/sheet/solve.ts';

const F = '```';
const SHEET = `# Kinds

${F}table sets "Sets"
set,ratios,weight (kg)
Wide,"[3.2, 1]",40
Close,"[2.6, 1]",50
${F}

${F}given
speed = 12.5 m/s
set = pick "Wide" from sets
${F}

${F}work
number = 7 / 2
quantity = speed * 1 h as km to 0.1
speeds = [1, 2] * speed as km/h to 1
words = ordinals(set.ratios)
truth = speed > 10 m/s
weight = set.weight as kg to 1
inferred = speed * 1 s
wrong = speed + 1 kg
${F}

${F}stack chain "Chain" as mm to 0.1
+ 3 mm
- 1 mm
${F}
`;

function record(text: string): Readonly<Record<string, ResultRecord>> {
  const book = linkBook([readSheet(text, 'kinds.md')]);
  const frame = createFrame(book);
  solve(book, frame);
  return recordResults(book, frame, 'kinds');
}

test.each([
  ['number', 3.5, '', '3.5'],
  ['quantity', 45, 'km', '45.0 km'],
  ['speeds', [45, 90], 'km/h', '[45, 90] km/h'],
  ['words', ['1st', '2nd'], '', '[1st, 2nd]'],
  ['truth', true, '', 'yes'],
  ['weight', 40, 'kg', '40 kg'],
  ['chain', 2, 'mm', '2.0 mm'],
])('%s is recorded with value, unit and text', (name, value, unit, text) => {
  const found = record(SHEET)[name]!;
  expect(found.unit).toBe(unit);
  expect(found.text.replaceAll('\u00a0', ' ')).toBe(text);
  const close = Array.isArray(value) ? value.map(closeTo) : closeTo(value);
  expect(found.value).toEqual(close);
});

test('a result whose sheet names no unit has the one that it is shown in', () => {
  const { value, unit, text } = record(SHEET).inferred!;
  expect(unit).not.toBe('');
  expect(text).toContain(unit);
  expect(value).toBeGreaterThan(0);
});

test('a result that can never be worked says why', () => {
  expect(record(SHEET).wrong).toMatchObject({
    value: null,
    unit: '',
    text: expect.stringMatching(/^cannot add/),
  });
});

test('formulas and chains are results; givens and tables are not', () => {
  const book = linkBook([readSheet(SHEET, 'kinds.md')]);
  const names = listResults(book, 'kinds').map(({ name }) => name);
  expect(names).toEqual(Object.keys(record(SHEET)));
  expect(names).not.toContain('speed');
  expect(names).toContain('chain');
});

function closeTo(value: unknown): unknown {
  return typeof value === 'number' ? expect.closeTo(value, 9) : value;
}

test('a value outside of what its formula is good for says so', () => {
  const sheet = (teeth: number) =>
    `# Teeth\n\n${F}work\nteeth = ${teeth}\ndoubled = 2 * teeth\n  valid when round(teeth, step: 1) = teeth "a gear has whole teeth"\n${F}\n`;
  expect(record(sheet(7.5)).doubled).toMatchObject({
    value: 15,
    text: '15 (Outside what this is good for: a gear has whole teeth)',
  });
  expect(record(sheet(7)).doubled).toMatchObject({ value: 14, text: '14' });
});
