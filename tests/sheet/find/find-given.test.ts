import { describe, expect, test } from 'vitest';
import { answerFind, type Found } from '../../../src/sheet/find/find-given.ts';
import { block, makeBook, makeSheet } from '../made-book.ts';

const GIVENS = block(
  'given',
  'axle = 3.5 from 2 to 5',
  'tyre = 2 m/rev from 1 m/rev to 3 m/rev',
  'open = blank',
);
const WORK = block(
  'work',
  'spin = axle * 30 rev/s',
  'speed = tyre * 10 rev/s',
  'each = [1, 2] * axle',
  'jump = if axle > 3.3 then 2 else 1',
  'partly = sqrt(axle - 4)',
  'flat = max(axle, 3)',
  'bow = (axle - 3) * (axle - 4)',
  'drag = axle * axle',
);

function ask(line: string, entries: Readonly<Record<string, string>> = {}): Found | undefined {
  const { book, frame } = makeSheet(GIVENS + WORK + block('find', line), entries);
  expect(book.problems).toEqual([]);
  return answerFind(book, frame, 'made', book.finds[0]!.linked!);
}
const found = (line: string, entries = {}) => ask(line, entries)!;
const at = (...places: readonly number[]) =>
  places.map((place) => ({ from: expect.closeTo(place, 9), to: expect.closeTo(place, 9) }));

describe('every value that meets the target, in the range', () => {
  test.each([
    ['one', 'axle so that spin is 90 rev/s', [3]],
    ['two', 'axle so that bow is 0', [3, 4]],
    ['one of an element', 'axle so that last(each) is 7', [3.5]],
    ['of a range of its own', 'axle so that bow is 0 from 3.5 to 4.5', [4]],
    ['at the end of the range', 'axle so that axle is 5', [5]],
    ['none outside of the range', 'axle so that axle is 5.1', []],
    ['none where the result jumps over it', 'axle so that jump is 1.5', []],
    ['where a value begins', 'axle so that partly is 0', [4]],
  ])('%s', (_, line, places) => {
    expect(found(line).solutions).toEqual(at(...places));
  });

  test('a stretch that meets it throughout is one with two ends', () => {
    const [stretch, ...others] = found('axle so that flat is 3').solutions;
    expect(others).toEqual([]);
    expect(stretch!.from).toBe(2);
    expect(stretch!.to).toBeCloseTo(3, 2);
  });
});

describe('where nothing meets it', () => {
  test('the closest approach is told, with what it gives', () => {
    const { solutions, closest } = found('axle so that bow is -1');
    expect(solutions).toEqual([]);
    expect(closest!.given).toBeCloseTo(3.5, 6);
    expect(closest!.result).toBeCloseTo(-0.25, 9);
  });

  test('nothing is closest where there is no value at all', () => {
    expect(found('axle so that partly is 1 from 2 to 3').closest).toBeUndefined();
  });
});

describe('a result that does not depend on the given', () => {
  test.each([
    ['at all', 'tyre so that spin is 90 rev/s'],
    ['in this range', 'axle so that flat is 4 from 2 to 2.5'],
    ['though it meets the target', 'axle so that flat is 3 from 2 to 2.5'],
  ])('%s', (_, line) => {
    expect(found(line)).toMatchObject({ depends: false, solutions: [] });
  });
});

test('sizes in stock are tried, the nearest to the target first; one without a result is left out', () => {
  const { stocked } = found('axle so that partly is 0.5 near [4, 3, 4.3, 4.21]');
  expect(stocked.map(({ given }) => given)).toEqual([4.21, 4.3, 4]);
  expect(stocked[0]!.result).toBeCloseTo(Math.sqrt(0.21), 9);
});

describe('a target that hangs on the given too', () => {
  test('is met where the two meet, not where the given stands now', () => {
    // x · x = 6 x − 8 at 2 and at 4, wherever x stands now.
    for (const axle of ['3.5', '2.2']) {
      const { solutions, moves } = found('axle so that drag is 6 * axle - 8', { axle });
      expect(moves).toBe(true);
      expect(solutions).toEqual(at(2, 4));
    }
  });

  test('is searched for also where the given is still blank', () => {
    const answer = found('axle so that drag is 6 * axle - 8', { axle: '' });
    expect(answer.target).toBeUndefined();
    expect(answer.solutions).toEqual(at(2, 4));
  });

  test('comes closest somewhere, with what both are there', () => {
    const { closest, solutions } = found('axle so that drag is 6 * axle - 10');
    expect(solutions).toEqual([]);
    expect(closest!.given).toBeCloseTo(3, 6);
    expect([closest!.result, closest!.target]).toEqual([
      expect.closeTo(9, 4),
      expect.closeTo(8, 4),
    ]);
  });

  test('and is always met is met by all the range', () => {
    const { solutions, depends } = found('axle so that drag is axle * axle');
    expect([solutions, depends]).toEqual([[{ from: 2, to: 5 }], true]);
  });
});

describe('what is not known yet', () => {
  test('without a target there is no answer', () => {
    expect(found('axle so that spin is open * 1 rev/s')).toMatchObject({
      target: undefined,
      solutions: [],
      closest: undefined,
    });
  });

  test('without a range there is none either', () => {
    expect(ask('axle so that spin is 90 rev/s from open to 5')).toBeUndefined();
  });

  test('stock that is not known is as good as none', () => {
    expect(found('axle so that axle is 3 near each / open').stocked).toEqual([]);
  });
});

test('ends that have passed each other are put in order', () => {
  const answer = found('axle so that spin is 90 rev/s from tyre * 2 rev/m to 2');
  expect([answer.from, answer.to]).toEqual([2, expect.closeTo(4, 12)]);
  expect(answer.solutions).toEqual(at(3));
});

test('a range of no width is tried at its one place', () => {
  const answer = found('axle so that axle is 2 from 2 to tyre * 1 rev/m');
  expect(answer.closest).toMatchObject({ given: 2, result: 2 });
});

test('a given of another sheet is found through all that hangs on it, and the frame stays', () => {
  const { book, frame } = makeBook({
    'a.md': block('given', 'p = 2 from 0 to 10') + block('work', 'q = p * 2'),
    'b.md': block('from a', 'p as here', 'q') + block('find', 'here so that q + here is 21'),
  });
  const before = structuredClone(frame);
  const answer = answerFind(book, frame, 'b', book.finds[0]!.linked!)!;
  expect(answer.solutions).toEqual(at(7));
  expect(frame).toEqual(before);
});

test('a clutch lining has two inner diameters for one torque, and both are found', () => {
  // Derived, as for clutch_inner_diameters: x³ − x + 3/8 = 0 for the inner over the outer diameter.
  const { book, frame } = makeSheet(
    block('given', 'inner = 120 mm from 20 mm to 190 mm', 'outer = 200 mm') +
      block(
        'work',
        'clamp = clamp_for_pressure(0.1 MPa, outer, inner)',
        'torque = clutch_torque_by_wear(2, 0.25, clamp, outer, inner)',
      ) +
      block(
        'find',
        'inner so that torque is 18.75 N·m * pi',
        'inner so that torque is 25 N·m * pi',
      ),
  );
  const [both, none] = book.finds.map(({ linked }) => answerFind(book, frame, 'made', linked!)!);
  expect(both!.solutions).toEqual(at(0.1, 0.05 * (Math.sqrt(13) - 1)));
  expect(none!.solutions).toEqual([]);
  expect(none!.closest!.given).toBeCloseTo(0.2 / Math.sqrt(3), 6);
});
