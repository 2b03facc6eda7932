import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placeGearLabels, spread } from '../../../src/drawing/kinds/tunnel-opening-labels.ts';

const spot = (gear: string, right: number, back: number) => ({
  gear,
  right,
  back,
  along: 5,
  across: 5,
  touches: false,
});
const EDGES = { left: 100, right: 200, front: 100, rear: 200 };
const place = (...levers: readonly ReturnType<typeof spot>[]) =>
  placeGearLabels(levers, ({ right, back }) => [right, back], EDGES, 300);

describe('names of gears', () => {
  test('stand in front, behind and beside the opening, as the gate lies', () => {
    const labels = place(spot('1st', 140, 120), spot('2nd', 140, 180), spot('N', 150, 150))!;
    const [first, second, neutral] = ['1st', '2nd', 'N'].map(
      (name) => labels.find(({ letters }) => letters.lines[0] === name)!.letters,
    );
    expect(first!.top).toBeLessThan(EDGES.front - 15);
    expect(second!.top).toBeGreaterThan(EDGES.rear);
    expect(neutral!.x).toBeGreaterThan(EDGES.right);
  });

  test('keep the order of their gates', () => {
    const labels = place(spot('5th', 152, 120), spot('1st', 148, 120), spot('3rd', 150, 120))!;
    expect(labels.map(({ letters }) => letters.lines[0])).toEqual(['1st', '3rd', '5th']);
  });

  test('have leaders to their own spots', () => {
    const [label] = place(spot('1st', 140, 120))!;
    expect(label!.to).toEqual([140, 120]);
  });

  test('without room for all are given up', () => {
    const many = Array.from({ length: 20 }, (_, i) => spot(`${i}th`, 150, 120));
    expect(place(...many)).toBeUndefined();
    expect(place()).toEqual([]);
  });
});

describe('spread', () => {
  test('leaves alone what has room', () => {
    expect(spread([50, 100], [10, 10], 0, 200)).toEqual([50, 100]);
  });

  test('what does not fit is not placed', () => {
    expect(spread([50, 50, 50], [60, 60, 60], 0, 100)).toBeUndefined();
  });

  test('nothing touches and nothing is beyond the ends, wherever things are wanted', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: -50, max: 450 }), fc.integer({ min: 4, max: 60 })), {
          minLength: 1,
          maxLength: 8,
        }),
        (things) => {
          const order = things.toSorted(([a], [b]) => a - b);
          const sizes = order.map(([, size]) => size);
          const places = spread(
            order.map(([want]) => want),
            sizes,
            0,
            400,
          );
          const needed = sizes.reduce((sum, size) => sum + size + 6, -6);
          expect(places === undefined).toBe(needed > 400);
          places?.forEach((at, i) => {
            const least = i === 0 ? 0 : places[i - 1]! + sizes[i - 1]! / 2 + 6;
            expect(at - sizes[i]! / 2).toBeGreaterThanOrEqual(least - 1e-6);
            expect(at + sizes[i]! / 2).toBeLessThanOrEqual(400 + 1e-6);
          });
        },
      ),
    );
  });
});
