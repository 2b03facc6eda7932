import { expect, test } from 'vitest';
import { parseArguments } from '../../src/cli/parse-arguments.ts';

const parse = (line: string) => parseArguments(['publish', ...line.split(' ')]);

test('what is left out has a value that suits most', () => {
  expect(parse('--zip a.zip')).toEqual({
    command: 'publish',
    sheets: [],
    zip: 'a.zip',
    width: 140,
    dotsPerInch: 300,
    colour: 'colour',
    lettering: 'outlines',
    figureFormats: ['svg', 'png'],
    tableFormats: ['md', 'csv'],
  });
});

test('what is typed is taken', () => {
  const line = '20-gearing --zip a.zip --width 90.5 --dpi 600 --grey --lettering font';
  expect(parse(`${line} --figures CSV,svg --tables html --job j.json`)).toEqual({
    command: 'publish',
    sheets: ['20-gearing'],
    zip: 'a.zip',
    job: 'j.json',
    width: 90.5,
    dotsPerInch: 600,
    colour: 'grey',
    lettering: 'font',
    figureFormats: ['svg', 'csv'],
    tableFormats: ['html'],
  });
});
