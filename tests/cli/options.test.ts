import { expect, test } from 'vitest';
import { findWrongOption, hasOption, lastOf, splitArguments } from '../../src/cli/options.ts';

test('words and options are told apart wherever they stand', () => {
  const typed = splitArguments(['a', '--svg', 'x.svg', 'b', '--json', '-h']);
  expect(typed.words).toEqual(['a', 'b']);
  expect(typed.options).toEqual([
    { name: 'svg', written: '--svg', value: 'x.svg' },
    { name: 'json', written: '--json', value: undefined },
    { name: 'help', written: '-h', value: undefined },
  ]);
});

test('a single dash is a file name', () => {
  expect(splitArguments(['--csv', '-']).options[0]).toMatchObject({ value: '-' });
});

test('after two dashes everything is a word', () => {
  expect(splitArguments(['--', '--json'])).toEqual({ words: ['--json'], options: [] });
});

test('an option of another command is refused', () => {
  const { options } = splitArguments(['--csv', 'x']);
  expect(findWrongOption('chart', options)).toBeUndefined();
  expect(findWrongOption('check', options)).toBe('check has no option --csv');
});

test('of an option named twice the last counts', () => {
  const { options } = splitArguments(['--svg', 'a', '--svg', 'b']);
  expect(lastOf(options, 'svg')).toBe('b');
  expect(lastOf(options, 'csv')).toBeUndefined();
  expect(hasOption(options, 'svg')).toBe(true);
  expect(hasOption(options, 'json')).toBe(false);
});
