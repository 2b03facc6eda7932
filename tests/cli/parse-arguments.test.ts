import { describe, expect, test } from 'vitest';
import { parseArguments } from '../../src/cli/parse-arguments.ts';

describe('a sound command', () => {
  test('solve takes a sheet and its readings', () => {
    const typed = ['solve', '20-gearing', '--given', 'axle_ratio=3.07', '--json'];
    expect(parseArguments(typed)).toEqual({
      command: 'solve',
      sheet: '20-gearing',
      givens: [{ name: 'axle_ratio', entry: '3.07' }],
      json: true,
    });
  });

  test.each([
    ['a space after the option', ['--given', 'x=1'], { name: 'x', entry: '1' }],
    ['an equals sign after the option', ['--given=x=1'], { name: 'x', entry: '1' }],
    [
      'blanks around the equals sign',
      ['--given', ' x = 3 1/8 in '],
      { name: 'x', entry: '3 1/8 in' },
    ],
    ['an equals sign in the entry', ['--given', 'note=a=b'], { name: 'note', entry: 'a=b' }],
    ['a negative number', ['--given', 'x=-3 mm'], { name: 'x', entry: '-3 mm' }],
    ['an empty entry', ['--given', 'x='], { name: 'x', entry: '' }],
    ['quotation marks', ['--given', `x=5' 7 1/4"`], { name: 'x', entry: `5' 7 1/4"` }],
  ])('solve reads a reading with %s', (_, options, given) => {
    expect(parseArguments(['solve', 's', ...options])).toMatchObject({ givens: [given] });
  });

  test('solve keeps a reading that is named twice, for the sheet to judge', () => {
    const typed = ['solve', 's', '--given', 'x=1', '--given', 'x=2'];
    expect(parseArguments(typed)).toMatchObject({ givens: [{ entry: '1' }, { entry: '2' }] });
  });

  test('options may stand before the sheet', () => {
    expect(parseArguments(['solve', '--json', 's'])).toMatchObject({ sheet: 's', json: true });
  });

  test('check takes several sheets', () => {
    expect(parseArguments(['check', 'a', 'b'])).toEqual({
      command: 'check',
      sheets: ['a', 'b'],
      json: false,
    });
  });

  test('chart takes either file or both', () => {
    expect(parseArguments(['chart', 's', 'T', '--svg', 'a.svg'])).toEqual({
      command: 'chart',
      sheet: 's',
      title: 'T',
      givens: [],
      svg: 'a.svg',
    });
    expect(parseArguments(['chart', 's', 'T', '--svg', 'a', '--csv', '-'])).toMatchObject({
      svg: 'a',
      csv: '-',
    });
  });

  test.each([
    [[], undefined],
    [['--help'], undefined],
    [['-h'], undefined],
    [['help'], undefined],
    [['help', 'solve'], 'solve'],
    [['solve', '--help'], 'solve'],
    [['chart', 's', '-h'], 'chart'],
  ])('%j asks for help', (typed, about) => {
    expect(parseArguments(typed)).toEqual({ command: 'help', ...(about && { about }) });
  });
});

describe('wrong use', () => {
  test.each([
    [['slove', 's'], 'there is no command "slove"; did you mean solve?'],
    [['toString'], 'there is no command "toString"'],
    [['help', 'me'], 'there is no command "me"'],
    [['--json'], '--json needs a command before it'],
    [['solve'], 'solve needs the name of a sheet'],
    [['solve', 'a', 'b'], 'solve takes one sheet; "b" is too many'],
    [['solve', 'a', '--jsn'], 'solve has no option --jsn; did you mean --json?'],
    [['solve', 'a', '--svg', 'x'], 'solve has no option --svg'],
    [['solve', 'a', '-x'], 'solve has no option -x'],
    [['solve', 'a', '--given'], '--given needs a value after it'],
    [['solve', 'a', '--given', ''], '--given needs a value after it'],
    [['solve', 'a', '--json=yes'], '--json takes no value'],
    [
      ['solve', 'a', '--given', 'axle_ratio'],
      '--given needs NAME=ENTRY, such as "axle_ratio=3.73", not "axle_ratio"',
    ],
    [
      ['solve', 'a', '--given', '=3'],
      '--given needs NAME=ENTRY, such as "axle_ratio=3.73", not "=3"',
    ],
    [
      ['solve', 'a', '--given', '--json'],
      '--given needs NAME=ENTRY, such as "axle_ratio=3.73", not "--json"',
    ],
    [['check'], 'check needs the name of at least one sheet'],
    [['chart'], 'chart needs the name of a sheet'],
    [['chart', 's', '--svg', 'x'], 'chart needs the title of a chart in quotes'],
    [['chart', 's', 'T'], 'chart needs --svg FILE or --csv FILE'],
    [
      ['chart', 's', 'Gap', 'left', '--svg', 'x'],
      'chart takes one sheet and one title; "left" is too many; put a title with blanks in quotes',
    ],
  ])('%j', (typed, sentence) => {
    expect(parseArguments(typed)).toMatchObject({ command: 'misuse', sentence });
  });
});

describe('find, compare and practice', () => {
  test('find takes a sheet, a question and what is to be found', () => {
    const typed = ['find', 's', 'top = 2000 rpm', '--by', 'axle', '--element', '5th', '--json'];
    expect(parseArguments(typed)).toEqual({
      command: 'find',
      sheet: 's',
      result: 'top',
      target: '2000 rpm',
      by: 'axle',
      element: '5th',
      givens: [],
      json: true,
    });
  });

  test('compare takes proposals, each with several differences', () => {
    const typed = ['compare', 's', '--with', 'A, b: x=[1, 2] in, y = 3', '--results', 'p, q'];
    expect(parseArguments(typed)).toEqual({
      command: 'compare',
      sheet: 's',
      variants: [
        {
          name: 'A, b',
          differences: [
            { name: 'x', entry: '[1, 2] in' },
            { name: 'y', entry: '3' },
          ],
        },
      ],
      results: ['p', 'q'],
      givens: [],
      json: false,
    });
  });

  test('practice takes a sheet and a seed', () => {
    expect(parseArguments(['practice', 's', '--seed', 'monday'])).toEqual({
      command: 'practice',
      sheet: 's',
      seed: 'monday',
      count: 6,
      answers: true,
      json: false,
    });
  });

  test.each([
    [['find'], /needs the name of a sheet/],
    [['find', 's'], /needs RESULT=TARGET/],
    [['find', 's', 'top'], /needs RESULT=TARGET.*, not "top"/],
    [['find', 's', 'top=1'], /needs --by GIVEN/],
    [['find', 's', 'top=1', 'more', '--by', 'x'], /"more" is too many/],
    [['compare'], /needs the name of a sheet/],
    [['compare', 's'], /needs at least one --with/],
    [['compare', 's', '--with', 'axle=3.73'], /--with needs "NAME: .*not "axle=3.73"/],
    [['compare', 's', '--with', 'A:'], /--with needs/],
    [['compare', 's', '--with', 'A: 3.73'], /--with needs/],
    [['practice', 's'], /needs --seed/],
    [['practice', 's', '--seed', '1', '--count', '0'], /from 1 to 200, not "0"/],
    [['practice', 's', '--seed', '1', '--count', 'x'], /not "x"/],
    [['practice', 's', '--seed', '1', '--by', 'x'], /practice has no option --by/],
  ])('%j is refused', (typed, words) => {
    expect(parseArguments(typed)).toMatchObject({
      command: 'misuse',
      sentence: expect.stringMatching(words),
    });
  });
});
