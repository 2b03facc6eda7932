import { expect, test } from 'vitest';
import { composeUnit, fuseTorques, type UnitPart } from '../../src/units/compound.ts';
import { nameDimension } from '../../src/units/dimension.ts';
import { findUnit } from '../../src/units/unit-index.ts';

function parts(...list: readonly (readonly [string, number])[]): readonly UnitPart[] {
  return list.map(([symbol, exponent]) => ({ unit: findUnit(symbol)!, exponent }));
}

test('one part is the declared unit itself', () => {
  expect(composeUnit(parts(['in', 1]))).toBe(findUnit('in'));
});

test('a compound that has a name of its own gets it', () => {
  expect(composeUnit(parts(['rev', 1], ['min', -1]))).toBe(findUnit('rpm'));
  expect(composeUnit(parts(['cm', 3]))).toBe(findUnit('cc'));
});

test.each([
  ['kg·m^2/s^2', parts(['kg', 1], ['m', 2], ['s', -2])],
  ['1/mi', parts(['mi', -1])],
  ['1/s^2·m', parts(['s', -2], ['m', 1])],
])('the symbol %s keeps the order of its parts', (symbol, made) => {
  expect(composeUnit(made).symbol).toBe(symbol);
});

test('factors multiply: a kilogram over a cubic centimetre is a million over a cubic metre', () => {
  expect(composeUnit(parts(['kg', 1], ['cm', -3])).factor).toBeCloseTo(1e6, 6);
});

test('the system is that of the first part that has one', () => {
  expect(composeUnit(parts(['rev', 1], ['mi', -1])).system).toBe('inch-pound');
  expect(composeUnit(parts(['mm', 1], ['rev', -1])).system).toBe('metric');
  expect(composeUnit(parts(['rad', 1], ['s', -2])).system).toBe('common');
});

test('a force beside a length is a torque in either order, declared or not', () => {
  expect(composeUnit(parts(['m', 1], ['N', 1]))).toBe(findUnit('N·m'));
  const made = composeUnit(parts(['mm', 1], ['N', 1]));
  expect([made.symbol, nameDimension(made.dimension), made.factor]).toEqual([
    'N·mm',
    'torque',
    1e-3,
  ]);
});

test('a torque is drawn together inside a longer compound', () => {
  const fused = fuseTorques(parts(['lbf', 1], ['ft', 1], ['rad', -1]));
  expect(fused.map((part) => part.unit.symbol)).toEqual(['lbf·ft', 'rad']);
});

test('a force on a squared length, and over a length, stays as it is', () => {
  expect(nameDimension(composeUnit(parts(['N', 1], ['m', 2])).dimension)).toBe(
    'length^3·mass/time^2',
  );
  expect(nameDimension(composeUnit(parts(['N', 1], ['mm', -1])).dimension)).toBe('stiffness');
});
