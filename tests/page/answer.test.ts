import { expect, test } from 'vitest';
import type { Kind } from '../../src/language/kind.ts';
import { createAnswer } from '../../src/page/answer.ts';
import type { Cell } from '../../src/sheet/cell.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';
import { textOf } from './test-desk.ts';

const inch = parseUnit('in')!;

function cell(kind: Kind): Cell {
  return { kind, display: { unit: inch, resolution: 0.001 } } as Cell;
}

const ONE = cell({ type: 'quantity', dimension: inch.dimension });
const MANY = cell({ type: 'list', dimension: inch.dimension });

test('one figure stands with its unit, and words beside it', () => {
  const answer = createAnswer(ONE, 0.0254, 'inch-pound', undefined, 'Wind it in.');
  expect(textOf(answer.querySelector('strong'))).toBe('1.000 in');
  expect(textOf(answer.querySelector('.sign-words'))).toBe('Wind it in.');
});

test('a figure and its unit are not parted by a line break', () => {
  expect(createAnswer(ONE, 0.0254, 'inch-pound', undefined).textContent).toContain('1.000\u00a0in');
});

test('a list is named where there are names, else counted', () => {
  const heads = (names: readonly string[] | undefined) =>
    [...createAnswer(MANY, Float64Array.of(1, 2), 'metric', names).querySelectorAll('dt')].map(
      textOf,
    );
  expect(heads(['1st', '2nd'])).toEqual(['1st', '2nd']);
  expect(heads(undefined)).toEqual(['1', '2']);
});

test('an empty list is none', () => {
  expect(textOf(createAnswer(MANY, Float64Array.of(), 'metric', undefined))).toBe('none');
});

test('words are listed', () => {
  const texts = cell({ type: 'texts' });
  expect(textOf(createAnswer(texts, ['1st', '2nd'], 'metric', undefined))).toBe('1st, 2nd');
});

test('the mark of a degree is as large as its number, a unit smaller', () => {
  const degree = parseUnit('deg')!;
  const angles = {
    kind: { type: 'list', dimension: degree.dimension },
    display: { unit: degree, resolution: 1 },
  } as Cell;
  const first = (of: Cell) =>
    createAnswer(of, Float64Array.of(0), 'inch-pound', undefined).querySelector('dd')!;
  expect(first(angles).innerHTML).toBe('0°');
  expect(first(MANY).querySelector('.unit')).not.toBeNull();
});
