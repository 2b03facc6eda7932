import { describe, expect, test } from 'vitest';
import { type MathElement, mathQuantity, printMath } from '../../src/language/print-math.ts';
import { readTree } from './made-formula.ts';

/** Elements in short: `mfrac(mi:gap mn:2)`. */
function sketch(element: MathElement | string): string {
  if (typeof element === 'string') return element;
  const { tag, children } = element;
  const [only] = children;
  if (children.length === 1 && typeof only === 'string') {
    return `${tag}:${only.replaceAll('\u00a0', ' ').trim()}`;
  }
  return `${tag}(${children.map(sketch).join(' ')})`;
}

describe('formulas as they are written on paper', () => {
  test.each([
    ['gap_left', 'mi:gap left'],
    ['spring.rate', 'mi:spring rate'],
    ['pi', 'mi:π'],
    ['"Heavy"', 'mtext:“Heavy”'],
    ['true', 'mtext:true'],
    ['3', 'mn:3'],
    ['3 in', 'mrow(mn:3 mtext:in)'],
    ['a / b', 'mfrac(mi:a mi:b)'],
    ['(a + b) / c', 'mfrac(mrow(mi:a mo:+ mi:b) mi:c)'],
    ['a^2', 'msup(mi:a mn:2)'],
    ['(a + b)^2', 'msup(mrow(mo:( mrow(mi:a mo:+ mi:b) mo:)) mn:2)'],
    ['(a / b)^2', 'msup(mrow(mo:( mfrac(mi:a mi:b) mo:)) mn:2)'],
    ['3 kg/m^3', 'mrow(mn:3 mtext:kg/m³)'],
    ['(3 in)^2', 'msup(mrow(mo:( mrow(mn:3 mtext:in) mo:)) mn:2)'],
    ['-a', 'mrow(mo:− mi:a)'],
    ['a - -b', 'mrow(mi:a mo:− mrow(mo:( mrow(mo:− mi:b) mo:)))'],
    ['a + -b / c', 'mrow(mi:a mo:+ mfrac(mrow(mo:− mi:b) mi:c))'],
    ['-a * b', 'mrow(mrow(mo:− mi:a) mo:× mi:b)'],
    ['not a', 'mrow(mo:not mi:a)'],
    ['a * (b + c)', 'mrow(mi:a mo:× mrow(mo:( mrow(mi:b mo:+ mi:c) mo:)))'],
    ['a - (b - c)', 'mrow(mi:a mo:− mrow(mo:( mrow(mi:b mo:− mi:c) mo:)))'],
    ['a - b / c', 'mrow(mi:a mo:− mfrac(mi:b mi:c))'],
    ['a <= b and b <> c', 'mrow(mrow(mi:a mo:≤ mi:b) mtext:and mrow(mi:b mo:≠ mi:c))'],
    ['[a, b]', 'mrow(mo:[ mi:a mo:, mi:b mo:])'],
    ['sqrt(a + b)', 'msqrt(mrow(mi:a mo:+ mi:b))'],
    ['abs(a)', 'mrow(mo:| mi:a mo:|)'],
    ['max(a, b)', 'mrow(mi:max mo:( mi:a mo:, mi:b mo:))'],
    ['a otherwise b', 'mrow(mi:a mtext:otherwise mi:b)'],
  ])('%s', (source, written) => {
    expect(sketch(printMath(readTree(source)))).toBe(written);
  });

  test('a choice has a line for each branch', () => {
    const { children } = printMath(readTree('if a < b then 1 else 2'));
    const table = children[1] as MathElement;
    expect(table.tag).toBe('mtable');
    expect(table.children).toHaveLength(2);
  });
});

test('a negative figure has a minus sign, and a degree sign stands close', () => {
  expect(sketch(mathQuantity('-3', ''))).toBe('mn:−3');
  expect(mathQuantity('30', '°').children[1]).toEqual({ tag: 'mtext', children: ['°'] });
});

test('the leaves may be written with figures in place of names', () => {
  const leaves = {
    name: () => mathQuantity('3.2', 'in'),
    quantity: () => mathQuantity('2', ''),
  };
  expect(sketch(printMath(readTree('gap * 2'), leaves))).toBe(
    'mrow(mrow(mn:3.2 mtext:in) mo:× mn:2)',
  );
});
