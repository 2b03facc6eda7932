import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inferEntry } from '../../src/language/entry.ts';
import type { GivenCell } from '../../src/sheet/cell.ts';
import { enterGiven, readGiven, rowsOf } from '../../src/sheet/enter.ts';
import { block, makeSheet } from './made-book.ts';

const BOLTS = block('table bolts "Bolts"', 'bolt,length (mm),sizes', 'Short,1,[1]', 'Long,2,[2]');
const MADE = makeSheet(
  BOLTS +
    block(
      'given',
      'gap = 3 ± 0.1 in',
      'many = 1; 2; 3 mm',
      'share = 5 as %',
      'words = "free"',
      'sizes = [1, 2] mm',
      'spare = blank mm',
      'bolt = pick "Long" from bolts',
      'length = pick "Long" from bolts.length',
      'broken = 3 furlong',
    ),
);
const given = (name: string) => MADE.cell(name) as GivenCell;
const read = (name: string, text: string, unit?: string) =>
  readGiven(MADE.book, given(name), unit === undefined ? { text } : { text, unit });

describe('the sheet’s own value', () => {
  test.each([
    ['gap', { state: 'value', explicit: true, tolerance: { minus: 0.00254, plus: 0.00254 } }],
    ['many', { state: 'value', value: 0.002, readings: [0.001, 0.002, 0.003] }],
    ['share', { state: 'value', value: 0.05 }],
    ['words', { state: 'value', value: 'free' }],
    ['sizes', { state: 'value', value: Float64Array.of(0.001, 0.002) }],
    ['spare', { state: 'blank' }],
    ['bolt', { state: 'value', value: { key: 'Long' }, row: 'Long' }],
    ['length', { state: 'value', value: 0.002, row: 'Long' }],
    ['broken', { state: 'failed', problem: { code: 'unknown-unit', place: { line: 15 } } }],
  ])('%s', (name, reading) => {
    expect(enterGiven(MADE.book, MADE.frame, given(name).index, undefined)).toMatchObject(reading);
  });
});

describe('what a person types', () => {
  test.each([
    ['gap', '4', { value: 4 * 0.0254, explicit: false }],
    ['gap', '4 mm', { value: 0.004, explicit: true }],
    ['words', ' tight ', { value: 'tight' }],
    ['sizes', '[3, 4]', { value: Float64Array.of(0.003, 0.004) }],
    ['bolt', ' short ', { row: 'Short', value: { key: 'Short' } }],
    ['length', 'SHORT', { row: 'Short', value: 0.001 }],
    ['length', '7', { value: 0.007 }],
  ])('%s: %s', (name, text, reading) => {
    expect(read(name, text)).toMatchObject({ state: 'value', ...reading });
  });

  test.each(['gap', 'sizes', 'words', 'bolt', 'length'])(
    'nothing at all leaves %s blank',
    (name) => {
      expect(read(name, '')).toEqual({ state: 'blank' });
      expect(read(name, '  ')).toEqual({ state: 'blank' });
    },
  );

  test.each([
    ['gap', '3 s', 'entry-dimension'],
    ['bolt', '7', 'unknown-row'],
    ['bolt', 'Shrt', 'unknown-row'],
    ['length', 'Shrt', 'name-in-entry'],
    ['sizes', '3', 'unreadable-entry'],
  ])('%s cannot be %s: %s', (name, text, code) => {
    expect(read(name, text)).toMatchObject({ state: 'failed', problem: { code } });
  });

  test('a row that is nearly there is named', () => {
    const reading = read('bolt', 'Shrt');
    const message = reading.state === 'failed' ? reading.problem.message : '';
    expect(message).toBe('Bolts has no row "Shrt"; did you mean "Short"?');
  });
});

describe('the unit that was meant when it was typed', () => {
  test('goes before the given’s own', () => {
    expect(read('gap', '4', 'mm')).toMatchObject({ value: 0.004, explicit: false });
  });

  test.each(['furlong', '', 'rpm'])('is not guessed at where it is "%s"', (unit) => {
    const reading = read('gap', '4', unit);
    expect(reading).toMatchObject({ state: 'failed', problem: { code: 'entry-dimension' } });
    if (reading.state === 'failed')
      expect(reading.problem.message).toMatch(/a length such as .*\sin\s/);
  });
});

test('an entry goes into the memory, and takes the place of the one before', () => {
  const { book, frame, cell, enter } = makeSheet(block('given', 'gap = 3', 'sizes = [1, 2]'));
  const [gap, sizes] = [cell('gap').index, cell('sizes').index];
  const held = () => [
    frame.memory.numbers[gap],
    frame.memory.blanks[gap],
    frame.memory.others[sizes],
  ];
  enter('gap', '4');
  enter('sizes', '[9]');
  expect(held()).toEqual([4, 0, Float64Array.of(9)]);
  enter('gap', '');
  enter('sizes', 'x');
  expect(held()).toEqual([Number.NaN, 1, undefined]);
  enterGiven(book, frame, gap, undefined);
  expect(held().slice(0, 2)).toEqual([3, 0]);
});

test('rows to pick from are those of the table; a given that is typed only has none', () => {
  const keys = (name: string) => rowsOf(MADE.book, given(name)).map(({ key }) => key);
  expect([keys('bolt'), keys('length'), keys('gap')]).toEqual([
    ['Short', 'Long'],
    ['Short', 'Long'],
    [],
  ]);
});

test('a sheet’s own entry that was read when it was linked is read again when it is entered', () => {
  const part = fc.constantFrom(
    '3',
    '1/2',
    '3 1/8',
    '0',
    '-2',
    '.5',
    '1e3',
    '(4)',
    '2 in',
    '3 mm',
    '5 s',
    '50 %',
  );
  const joint = fc.constantFrom(' + ', ' - ', ' * ', ' / ', ' ± ', '; ', ' +- ');
  const entry = fc
    .tuple(part, fc.array(fc.tuple(joint, part), { maxLength: 3 }))
    .map(([first, rest]) => first + rest.map((pair) => pair.join('')).join(''));
  fc.assert(
    fc.property(entry, (text) => {
      const shape = inferEntry(text)!;
      const made = makeSheet(block('given', `x = ${text} "X"`));
      const { state } = made.outcome('x');
      expect({ text, state }).toEqual({ text, state: 'code' in shape ? 'failed' : 'value' });
    }),
    { numRuns: 400 },
  );
});
