import { expect, test } from 'vitest';
import { drawProblem } from '../../../src/sheet/practice/draw-problem.ts';
import { drawSheet, readSeed, showDealt } from '../../../src/sheet/practice/practice-sheet.ts';
import { block, makeSheet } from '../made-book.ts';

const MADE = makeSheet(
  [
    block(
      'given',
      'deep = 3 in "Deep" from 2 in to 4 in to 0.001',
      'high = 1 in "High" from 0.5 in to 1.5 in to 0.001',
    ),
    block('work', 'gap = deep - high "Gap" as in to 0.001', 'both = deep + high as in to 0.01'),
    block('practice "The gap"', 'ask gap within 0.001 in "How wide?"'),
    block('practice "Both"', 'ask both within 0.01 in "How high?"'),
    block('practice "Wrong"', 'ask no_such within 1 "?"'),
  ].join('\n'),
);

function draw(count: number, seed = 5) {
  return drawSheet(MADE.book, MADE.frame, 'made', { seed, count });
}

test('the questions of a sheet are taken in turn until there are enough', () => {
  expect(draw(5).problems.map(({ title }) => title)).toEqual([
    'The gap',
    'Both',
    'The gap',
    'Both',
    'The gap',
  ]);
});

test('no two problems of one question have the same numbers', () => {
  const numbers = draw(8).problems.map(({ title, numbers: own }) => JSON.stringify([title, own]));
  expect(new Set(numbers).size).toBe(8);
});

test('the first of a question is the one that the page deals for the seed', () => {
  const linked = MADE.book.practices[0]!.linked!;
  const dealt = drawProblem(MADE.book, MADE.frame, linked, 5)!;
  expect(draw(2).problems[0]!.problem.numbers).toEqual(dealt.numbers);
});

test('a problem tells its numbers, its answer and how near is right', () => {
  const [first] = draw(1).problems;
  const [deep, high] = first!.numbers.map(({ text }) => Number.parseFloat(text)) as [
    number,
    number,
  ];
  expect(Number.parseFloat(first!.answer)).toBeCloseTo(deep - high, 9);
  expect(first!.within.replaceAll('\u00a0', ' ')).toBe('± 0.001 in');
  expect(first!.numbers.map(({ label }) => label)).toEqual(['Deep', 'High']);
});

test('a metric reading is dealt in millimetres, whatever the page shows results in', () => {
  const { book } = makeSheet(block('given', 'pitch = 1.5 mm/rev to 0.01', 'deep = 3 in to 0.001'));
  const [pitch, deep] = [book.find('made', 'pitch')!, book.find('made', 'deep')!];
  const plain = (text: string) => text.replaceAll('\u00a0', ' ');
  const perTurn = 0.00175 / (2 * Math.PI);
  expect(plain(showDealt(perTurn, pitch, 'inch-pound'))).toBe('1.75 mm/rev');
  expect(plain(showDealt(perTurn, pitch, 'metric'))).toBe('1.75 mm/rev');
  expect(plain(showDealt(0.0762, deep, 'inch-pound'))).toBe('3.000 in');
  expect(plain(showDealt(0.0762, deep, 'metric'))).toBe('76.20 mm');
});

test('a sheet without questions, or none wanted, has no problems', () => {
  expect(draw(0).problems).toEqual([]);
  expect(drawSheet(MADE.book, MADE.frame, 'other', { seed: 1, count: 3 }).problems).toEqual([]);
});

test('a whole number is its own seed, and any text gives one', () => {
  expect(readSeed(' 12 ')).toBe(12);
  expect(readSeed('-3')).toBe(3);
  expect(readSeed('monday')).toBe(readSeed('monday'));
  expect(readSeed('monday')).not.toBe(readSeed('Monday'));
  expect(Number.isSafeInteger(readSeed(''))).toBe(true);
});
