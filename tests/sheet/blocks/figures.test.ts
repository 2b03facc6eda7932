import { expect, test } from 'vitest';
import { faultsOf, readBlock } from './made-block.ts';

test('names, with labels of their own or without', () => {
  const { figures: table, problems } = readBlock('figures', '"Gap"', 'gap "As set"', 'wear');
  expect(problems).toEqual([]);
  expect(table!.title).toBe('Gap');
  expect(table!.figures.map(({ name, label, sheet }) => [name.name, label, sheet?.name])).toEqual([
    ['gap', 'As set', undefined],
    ['wear', undefined, undefined],
  ]);
});

test('lines below a sheet are that sheet’s, until the next', () => {
  const { figures: table } = readBlock(
    'figures',
    '',
    'a',
    'from 70-bearing',
    'b',
    'c',
    'from 80-pedal',
    'd',
  );
  expect(table!.figures.map(({ name, sheet }) => `${sheet?.name} ${name.name}`)).toEqual([
    'undefined a',
    '70-bearing b',
    '70-bearing c',
    '80-pedal d',
  ]);
});

test('a block without figures is no table', () => {
  expect(readBlock('figures', '"Empty"').figures).toBeUndefined();
});

test('what is no name is told with its place', () => {
  expect(faultsOf(readBlock('figures', '', 'gap', 'Gap'))).toEqual(['misspelt-name 3:1']);
});
