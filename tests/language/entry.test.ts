import fc from 'fast-check';
import { evaluate } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { inferEntry, readEntry } from '../../src/language/entry.ts';
import { formatQuantity } from '../../src/units/format-quantity.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';
import { UNITS } from '../../src/units/unit-table.ts';
import { expectProblem, expectValue, field } from './made-entry.ts';

const INCH = 0.0254;
const INCHES = field('in');

describe('every form of a length in a field of inches', () => {
  test.each([
    ['3.212', 3.212, 'in', false],
    ['3 1/8', 3.125, 'in', false],
    ['3-1/8', 3.125, 'in', false],
    ['3-1/8"', 3.125, 'in', true],
    ['3⅛', 3.125, 'in', false],
    ['.025', 0.025, 'in', false],
    ['25 thou', 0.025, 'thou', true],
    ['25thou', 0.025, 'thou', true],
    ['80.6 mm', 80.6 / 25.4, 'mm', true],
    [`5' 7 1/4"`, 67.25, 'in', true],
    ['5 ft 7 in', 67, 'in', true],
    ['12,5', 12.5, 'in', false],
    ['3.212 - 0.250', 2.962, 'in', false],
    ['2 * 3.5 in', 7, 'in', true],
    ['(3 + 1/8) in', 3.125, 'in', true],
    ['(3.212 - 0.250)"', 2.962, 'in', true],
    ['12 in − 25.4 mm', 11, undefined, true],
    ['-3.2', -3.2, 'in', false],
    ['−3.2', -3.2, 'in', false],
    ['  3  ', 3, 'in', false],
    ['1e9 in', 1e9, 'in', true],
    ['5\u202F280', 5280, 'in', false],
    ['0', 0, 'in', false],
  ])('%s is %d in', (text, inches, unit, explicit) => {
    const reading = expectValue(text, INCHES);
    expect((reading.value as number) / INCH).toBeCloseTo(inches, 9);
    expect([reading.unit?.symbol, reading.explicit]).toEqual([unit, explicit]);
  });
});

test('a blank text is blank, not zero', () => {
  for (const text of ['', '   ', '\u00A0', '\n']) {
    expect(readEntry(text, INCHES)).toEqual({ state: 'blank' });
  }
});

test('a text field takes any words, without the blanks around them', () => {
  expect(readEntry(' old three-speed ', { kind: { type: 'text' } })).toEqual({
    state: 'value',
    value: 'old three-speed',
    explicit: false,
  });
});

test('a row of a table cannot be typed', () => {
  const row = { kind: { type: 'row', columns: new Map() } } as const;
  expect(expectProblem('3', row).message).toBe(
    'this value is chosen from a table and cannot be typed',
  );
});

describe('a quantity that does not belong is told what does', () => {
  test.each([
    ['70 mph', 'in', '70 mph is a speed; a length such as 3.2\u00A0in belongs here'],
    ['3 in', 'rpm', '3 in is a length; a turning speed such as 3.2\u00A0rpm belongs here'],
    ['3 in', '', '3 in is a length; a plain number such as 3.2 belongs here'],
    [
      '3 in / 2 in',
      'in',
      '3 in / 2 in is a plain number; a length such as 3.2\u00A0in belongs here',
    ],
    ['3 in * 2 in', 'in', '3 in * 2 in is an area; a length such as 3.2\u00A0in belongs here'],
    ['3 N', 'N·m', '3 N is a force; a torque such as 3.2\u00A0N·m belongs here'],
  ])('%s in a field of %s', (text, symbol, message) => {
    const problem = expectProblem(text, field(symbol));
    expect(problem).toMatchObject({ code: 'entry-dimension', message, from: 0, to: text.length });
  });

  test('also in a field without a unit of its own', () => {
    const expected = { kind: { type: 'quantity', dimension: [1, 0, 0, 0] } } as const;
    expect(expectProblem('3.2', expected).message).toBe(
      '3.2 is a plain number; a length such as 3.2\u00A0in belongs here',
    );
  });
});

describe('bad input gets a sentence', () => {
  test.each([
    ['NaN', 'name-in-entry', '"NaN" is not a number or a unit'],
    ['Infinity', 'name-in-entry', '"Infinity" is not a number or a unit'],
    ['abc', 'name-in-entry', '"abc" is not a number or a unit'],
    ['gap', 'name-in-entry', '"gap" is not a number or a unit'],
    ['sqrt(4)', 'name-in-entry', '"sqrt" is not a number or a unit'],
    ['true', 'name-in-entry', '"true" is not a number or a unit'],
    ['(3', 'unexpected-end', 'closing bracket'],
    ['3)', 'unexpected-word', 'found ")"'],
    ['3 +', 'unexpected-end', 'expected a value'],
    ['1e999', 'malformed-number', '1e999 is too large a number'],
    ['1e300 * 1e300', 'overflow', 'too large'],
    ['1/0', 'division-by-zero', 'division by zero'],
    ['1 in / 0', 'division-by-zero', 'division by zero'],
    ['(-4)^0.5', 'not-a-power', 'not a real number'],
    ['1,234', 'ambiguous-number', '1,234 can be read as 1234 or as 1.234'],
    ['3.2.1', 'malformed-number', 'more than one decimal point'],
    ['3 in + 2', 'mixed-units', '2 has no unit, but 3 in has one; write a unit behind both'],
    ['3.212 - 0.250 in', 'mixed-units', '3.212 has no unit, but 0.250 in has one'],
    ['3 in + 2 rpm', 'dimension-mismatch', 'cannot add 3 in (length) to 2 rpm (turning speed)'],
    ['3 rmp', 'unknown-unit', 'no unit is called rmp; did you mean rpm?'],
    ['3rmp', 'unknown-unit', 'no unit is called rmp; did you mean rpm?'],
    ['12 ft lb', 'unknown-unit', 'lb does not stand behind a number'],
    ['3 < 4', 'unreadable-entry', 'one number belongs here, not a comparison'],
    ['[1, 2]', 'unreadable-entry', 'one number belongs here, not a list'],
    ['"', 'unreadable-entry', 'cannot read " here'],
    ['3 in <script>alert(1)</script>', 'name-in-entry', '"script"'],
    ['0x10', 'unknown-unit', 'no unit is called x10'],
  ])('%s', (text, code, part) => {
    const problem = expectProblem(text, INCHES);
    expect(problem.message).toContain(part);
    expect(problem.code).toBe(code);
    expect(problem.from).toBeLessThanOrEqual(problem.to);
    expect(problem.to).toBeLessThanOrEqual(text.length);
  });

  test.each([
    ['letters', 'x'.repeat(100_000)],
    ['digits', '1'.repeat(100_000)],
    ['brackets', '('.repeat(100_000)],
    ['commas', '1, '.repeat(33_333)],
    ['signs', '+-'.repeat(50_000)],
    ['slashes', '1 in /'.repeat(16_667)],
  ])('100,000 %s are refused unread', (_, text) => {
    expect(expectProblem(text, INCHES)).toMatchObject({
      code: 'entry-too-long',
      message: `the entry has ${text.length} characters; up to 1000 are read`,
    });
  });

  test.each([
    ['brackets', '('.repeat(1000), 'too-deep'],
    ['minus signs', '-'.repeat(1000), 'too-deep'],
    ['tolerances', '3 +5/-3 '.repeat(125), 'bad-tolerance'],
    ['blanks and signs', `3 +${' '.repeat(900)}`, 'unexpected-end'],
  ])('a thousand characters of %s are read to their fault', (_, text, code) => {
    const problem = expectProblem(text, INCHES);
    expect(code === 'bad-tolerance' || problem.code === code).toBe(true);
    expect(problem.message.length).toBeLessThan(300);
  });
});

test('a text of any characters is read or refused, and never throws', () => {
  const characters = fc.constantFrom(
    ...Array.from(`0123456789.,;/-+−±%()[]^* '"°in mrpe⅛\u202F\u00A0x`),
  );
  const text = fc.array(characters, { maxLength: 24 }).map((list) => list.join(''));
  fc.assert(
    fc.property(
      fc.oneof(text, fc.string()),
      fc.constantFrom('in', '%', '', 'rpm'),
      (entry, symbol) => {
        for (const type of ['quantity', 'list'] as const) {
          const reading = readEntry(entry, field(symbol, type));
          if (reading.state === 'failed')
            expect(reading.problem.message).not.toMatch(/undefined|NaN$/);
          if (reading.state === 'value') {
            const { value, tolerance } = reading;
            const numbers = typeof value === 'object' ? Array.from(value) : [value as number];
            const all = [...numbers, tolerance?.minus ?? 0, tolerance?.plus ?? 0];
            expect(all.filter((x) => !Number.isFinite(x))).toEqual([]);
          }
        }
      },
    ),
    { numRuns: 2000 },
  );
});

test('what the page shows can be typed in again', () => {
  const unit = fc.constantFrom(...UNITS, parseUnit('in/rev')!, parseUnit('kg/m^3')!);
  const size = fc.double({ min: 0.01, max: 1e6, noNaN: true });
  fc.assert(
    fc.property(unit, size, fc.boolean(), (one, amount, negative) => {
      const value = (negative ? -amount : amount) * one.factor;
      const reading = expectValue(formatQuantity(value, one, { figures: 9 }), field(one.symbol));
      expect(Math.abs((reading.value as number) / value - 1)).toBeLessThan(1e-8);
      expect(reading.unit?.symbol).toBe(one.symbol);
    }),
  );
});

test('mathjs works the same arithmetic out to the same number', () => {
  const { tree } = fc.letrec<{ tree: string }>((tie) => ({
    tree: fc.oneof(
      { depthSize: 'small' },
      fc.double({ min: 0.1, max: 99, noNaN: true }).map((x) => x.toFixed(3)),
      fc
        .tuple(tie('tree'), fc.constantFrom(' + ', ' - ', ' * ', ' / '), tie('tree'))
        .map((p) => p.join('')),
      tie('tree').map((inner) => `(${inner})`),
      tie('tree').map((inner) => `-(${inner})`),
      fc.tuple(tie('tree'), fc.constantFrom('2', '3')).map(([base, power]) => `(${base})^${power}`),
    ),
  }));
  fc.assert(
    fc.property(tree, (text) => {
      fc.pre(text.length < 1000);
      const expected = evaluate(text) as number;
      fc.pre(Number.isFinite(expected));
      const value = expectValue(text, field('')).value as number;
      expect(Math.abs(value - expected)).toBeLessThanOrEqual(
        1e-12 * Math.max(1, Math.abs(expected)),
      );
    }),
  );
});

describe('the kind of an entry is told by its text', () => {
  test.each([
    ['3.212 ± 0.003 in', 'quantity', [1, 0, 0, 0], 'in'],
    ['3.05', 'quantity', [0, 0, 0, 0], undefined],
    ['205 mm', 'quantity', [1, 0, 0, 0], 'mm'],
    ['60 %', 'quantity', [0, 0, 0, 0], '%'],
    ['[0.005, 0.010] in', 'list', [1, 0, 0, 0], 'in'],
    [' [2.95, 1.95]', 'list', [0, 0, 0, 0], undefined],
    ['[]', 'list', [0, 0, 0, 0], undefined],
    ['5 ft - 2 mm', 'quantity', [1, 0, 0, 0], undefined],
  ])('%s is a %s', (text, type, dimension, unit) => {
    expect(inferEntry(text)).toMatchObject({
      kind: { type, dimension },
      ...(unit && { unit: { symbol: unit } }),
    });
  });

  test('a blank text tells nothing, a faulty one its fault', () => {
    expect(inferEntry(' ')).toBeUndefined();
    expect(inferEntry('3 +')).toMatchObject({ code: 'unexpected-end' });
    expect(inferEntry('1'.repeat(1001))).toMatchObject({ code: 'entry-too-long' });
  });
});
