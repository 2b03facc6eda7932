import { expect, test } from 'vitest';
import type { MapData } from '../../src/sheet/map-data.ts';
import { sweepMap } from '../../src/sheet/sweep-two.ts';
import { block, type MadeBook, makeSheet } from './made-book.ts';

const GIVENS = block(
  'given',
  'axle = 3 "Axle" from 2 to 4',
  'wide = 2 in "Wide"',
  'measured = blank in "Measured"',
);
const WORK = block(
  'work',
  'around = measured otherwise 3 * wide "Around" as in to 0.1',
  'out = axle * around "Out" as in to 0.1',
  'both = [1, 2] * axle',
);

function make(...lines: readonly string[]): MadeBook {
  return makeSheet([GIVENS, WORK, block('chart "Map"', ...lines)].join('\n'));
}

function map({ book, frame }: MadeBook): MapData {
  const data = sweepMap(book, frame, book.charts[0]!.statement, 'made');
  if ('code' in data) throw new Error(data.message);
  return data;
}

const CURVE = 'out as in over axle from 2 to 4 and around from 4 in to 8 in';

test('the sheet is worked at each point of a grid; what is worked out runs as if it were measured', () => {
  const data = map(make(CURVE, 'limits 12 in to 20 in "Usual"', 'mark axle "Fitted" on x'));
  const { xs, ys, values } = data;
  expect([xs[0], xs.at(-1), ys[0], ys.at(-1)].map((x) => Math.round(x! * 1e9) / 1e9)).toEqual([
    2, 4, 4, 8,
  ]);
  for (const [j, y] of ys.entries()) {
    for (const [i, x] of xs.entries()) expect(values[j * xs.length + i]).toBeCloseTo(x * y, 9);
  }
  expect(data.z).toMatchObject({ label: 'Out', unit: 'in' });
  expect(data.limits[0]!.most).toBeCloseTo(20, 9);
  expect(data.marks).toEqual([{ axis: 'x', value: 3, label: 'Fitted' }]);
});

test('the job stands where its values are', () => {
  const { now } = map(make(CURVE));
  expect(now).toEqual({ x: 3, y: expect.closeTo(6, 9), z: expect.closeTo(18, 9) });
});

test('the frame stays as it was', () => {
  const made = make(CURVE);
  const before = made.frame.memory.numbers.slice();
  map(made);
  expect(made.frame.memory.numbers).toEqual(before);
});

test('an axis that is blank has no point, and the map is drawn all the same', () => {
  const data = map(make('out as in over axle from 2 to 4 and measured from 4 in to 8 in'));
  expect(data.now).toBeUndefined();
  expect(data.values.every(Number.isFinite)).toBe(true);
});

test('ends that have passed each other are put in order', () => {
  const data = map(make('out as in over axle from 2 to 4 and around from wide to wide / 2'));
  expect(data.y.from).toBeCloseTo(1, 9);
});

test.each([
  ['a list', 'both over axle from 2 to 4 and around from 4 in to 8 in', /a map/],
  [
    'several results',
    'out, around as in over axle from 2 to 4 and wide from 1 in to 2 in',
    /several results/,
  ],
  ['a range of another kind', 'out as in over axle from 2 to 4 and around from 4 to 8', /length/],
  [
    'a name that is not there',
    'out as in over axle from 2 to 4 and arond from 4 in to 8 in',
    /around/,
  ],
])('%s is refused', (_, line, words) => {
  const { book } = make(line);
  expect(book.problems[0]!.message).toMatch(words);
});
