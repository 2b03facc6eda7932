import { describe, expect, test } from 'vitest';
import type { LinkedPractice } from '../../../src/sheet/cell.ts';
import type { PracticeProblem } from '../../../src/sheet/practice/draw-problem.ts';
import { judgeAnswer } from '../../../src/sheet/practice/judge-answer.ts';
import { parseUnit } from '../../../src/units/parse-unit.ts';

const inch = parseUnit('in')!;
const LENGTH = { type: 'quantity', dimension: inch.dimension } as const;
const PLAIN = { type: 'quantity', dimension: [0, 0, 0, 0] } as const;

const PRACTICE = {
  mistakes: [{ sentence: 'Forgot the straightedge.' }, { sentence: 'Added.' }],
} as unknown as LinkedPractice;

/** 0.162 in is right to a thousandth; the mistakes lead to 0.412 in and 6.4 in. */
function problem(answer = 0.162, factor = inch.factor): PracticeProblem {
  return {
    seed: 1,
    numbers: [],
    answer: answer * factor,
    within: 0.001 * factor,
    mistakes: [0.412 * factor, 6.4 * factor],
    frame: undefined as never,
  };
}
const judge = (text: string) => judgeAnswer(text, problem(), PRACTICE, LENGTH, inch);
const judgePlain = (text: string) => judgeAnswer(text, problem(2.5, 1), PRACTICE, PLAIN, undefined);

describe('an answer in inches', () => {
  test.each([
    ['0.162 in', 'right'],
    ['.162 in', 'right'],
    ['0.1625 in', 'right'],
    ['0.163 in', 'right'],
    ['0.161 in', 'right'],
    ['162 thou', 'right'],
    ['4.115 mm', 'right'],
    ['3.212 in - 3.050 in', 'right'],
    ['0.1631 in', 'rounding'],
    ['0.17 in', 'rounding'],
    ['0.1519 in', 'wrong'],
    ['-0.162 in', 'sign'],
    ['0.162', 'unit'],
    ['0.162 mm', 'unit'],
    ['0.162 s', 'unit'],
    ['0.412 in', 'mistake'],
    ['6.4 in', 'mistake'],
    ['5 in', 'wrong'],
    ['5', 'wrong'],
    ['5 s', 'wrong'],
    ['', 'unreadable'],
    ['  ', 'unreadable'],
    ['abc', 'unreadable'],
    ['1,234 in', 'unreadable'],
    ['[0.162] in', 'unreadable'],
    ['0.162 in; 0.163 in', 'right'],
    ['0.162 ± 0.001 in', 'right'],
  ])('%s is %s', (text, type) => {
    expect(judge(text).type).toBe(type);
  });
});

describe('what is told', () => {
  test.each([
    ['0.162 in', 'Right.'],
    ['0.162', 'The number is right, without its unit: write "in" behind the number.'],
    [
      '0.162 s',
      'The number is right, but time is the wrong kind of unit: write "in" behind the number.',
    ],
    ['0.162 mm', 'The number is right, but "mm" stands behind it: write "in".'],
    ['-0.162 in', 'The size is right, the sign is not: think which way it goes.'],
    ['0.17 in', 'Nearly: a figure was rounded too early. Carry more digits to the end.'],
    ['0.412 in', 'Forgot the straightedge.'],
    ['5', 'Not so, and the unit is missing: write "in" behind the number.'],
    ['5 s', 'Not so, and time is the wrong kind of unit: write "in" behind the number.'],
    ['', 'Type an answer first.'],
    ['[1] in', 'One number belongs here.'],
    [
      'abc',
      '"abc" is not a number or a unit; an entry holds numbers only, such as 3.212 or 3 1/8 in.',
    ],
  ])('%s: %s', (text, sentence) => {
    expect(judge(text).sentence).toBe(sentence);
  });

  test('which of the sheet’s mistakes it was', () => {
    expect(judge('6.4 in')).toEqual({ type: 'mistake', mistake: 1, sentence: 'Added.' });
  });
});

describe('an answer that is a plain number', () => {
  test.each([
    ['2.5', 'right'],
    ['5/2', 'right'],
    ['250 %', 'right'],
    ['2.5 in', 'unit'],
    ['3', 'wrong'],
  ])('%s is %s', (text, type) => {
    expect(judgePlain(text).type).toBe(type);
  });

  test('a unit that does not belong is named, and what belongs instead', () => {
    expect(judgePlain('2.5 in').sentence).toBe(
      'The number is right, but length is the wrong kind of unit: write it without one.',
    );
  });
});

test('a mistake goes before a sign, and both before rounding', () => {
  const near: PracticeProblem = {
    ...problem(),
    mistakes: [-0.162 * inch.factor, 0.17 * inch.factor],
  };
  const told = (text: string) => judgeAnswer(text, near, PRACTICE, LENGTH, inch).type;
  expect([told('-0.162 in'), told('0.17 in')]).toEqual(['mistake', 'mistake']);
});

test('a mistake that leads nowhere catches nothing', () => {
  const lost: PracticeProblem = { ...problem(), mistakes: [Number.NaN] };
  expect(judgeAnswer('5 in', lost, PRACTICE, LENGTH, inch).type).toBe('wrong');
});
