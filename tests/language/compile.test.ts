import { describe, expect, test } from 'vitest';
import { checkExpression } from '../../src/language/check.ts';
import { compileExpression } from '../../src/language/compile.ts';
import { createContext, createMemoryOf, createScope, makeNames, readTree } from './made-formula.ts';

/** Compiles once and runs over changing memory. */
function compile(source: string, names: Readonly<Record<string, string>>) {
  const made = makeNames(names);
  const tree = readTree(source);
  const context = createContext(checkExpression(tree, createScope(made), source), made);
  return { code: compileExpression(tree, context), memory: createMemoryOf(made) };
}

describe('compiled code', () => {
  test('reads the memory each time it runs', () => {
    const { code, memory } = compile('a * 2', { a: '3' });
    expect(code.run(memory)).toBe(6);
    memory.numbers[0] = 5;
    expect(code.run(memory)).toBe(10);
  });

  test('keeps nothing from one run for the next', () => {
    const { code, memory } = compile('[a, b] * a', { a: '3', b: '4' });
    const first = code.run(memory);
    memory.numbers[0] = 1;
    expect(code.run(memory)).toEqual(Float64Array.of(1, 4));
    expect(first).toEqual(Float64Array.of(9, 12));
  });

  test.each([
    ['a', 'number'],
    ['good', 'number'],
    ['a < 2', 'number'],
    ['list', 'list'],
    ['list * 2', 'list'],
    ['"text"', 'other'],
    ['["a", "b"]', 'other'],
    ['row', 'other'],
    ['row.rate', 'number'],
    ['row.name', 'other'],
    ['row.sizes', 'list'],
    ['table.rate', 'list'],
    ['table.name', 'other'],
    ['if good then list else list * 2', 'list'],
    ['first(list)', 'number'],
    ['ordinals(list)', 'other'],
  ])('%s gives a %s', (source, type) => {
    const names = {
      a: '1',
      good: 'true',
      list: '[1, 2]',
      row: '{name: "Heavy", rate: 3, sizes: [1, 2]}',
      table: '[{name: "Heavy", rate: 3}]',
    };
    expect(compile(source, names).code.type).toBe(type);
  });

  test.each(['a', 'list', 'name', 'row.rate', 'row.sizes', 'table.rate', '["x", name]'])(
    '%s of empty memory has no value and does not throw',
    (source) => {
      const names = {
        a: '1',
        list: '[1]',
        name: '"x"',
        row: '{name: "Heavy", rate: 3, sizes: [1]}',
        table: '[{name: "Heavy", rate: 3}]',
      };
      const { code, memory } = compile(source, names);
      memory.numbers.fill(Number.NaN);
      memory.others.fill(undefined);
      const value = code.run(memory);
      expect(value === undefined || Number.isNaN(value)).toBe(true);
    },
  );

  test('a table without rows has empty columns', () => {
    const { code, memory } = compile('count(table.name)', { table: '[{name: "Heavy", rate: 3}]' });
    memory.others[0] = [];
    expect(code.run(memory)).toBe(0);
  });
});
