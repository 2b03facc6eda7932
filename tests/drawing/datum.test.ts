import { beforeAll, describe, expect, test } from 'vitest';
import { describeDatum, drawDatum } from '../../src/drawing/datum.ts';
import { type Datum, ONE_PART, TWO_FACES } from '../../src/drawing/datum-kinds.ts';
import { findCut, findOverlaps, listTexts, loadPlate, numbersOf, show } from '../support/drawn.ts';

beforeAll(loadPlate);

const KINDS: readonly Datum[] = [
  ...TWO_FACES.map((kind) => ({
    kind,
    from: 'top of the straightedge on the housing',
    to: 'finger tips of the cover',
  })),
  ...ONE_PART.map((kind) => ({ kind, from: 'dial on the crank, plunger in the bore' })),
];

const draw = (datum: Datum, width = 150) =>
  show(drawDatum(datum, { document, width, idPrefix: 'a' }));

describe.each(KINDS)('$kind', (datum) => {
  test.each([110, 150, 220])('its words are whole and apart at %i px', (width) => {
    const svg = draw(datum, width);
    expect(findCut(svg)).toEqual([]);
    expect(findOverlaps(svg)).toEqual([]);
    const words = listTexts(svg).map(({ text }) => text);
    expect(words.join(' ')).toContain('the');
  });

  test('nothing that is drawn sticks out, or lies on the words', () => {
    const svg = draw(datum);
    const { width, height } = svg.getBBox();
    expect(width).toBeLessThanOrEqual(150);
    expect(height).toBeLessThanOrEqual(svg.height.baseVal.value + 0.5);
    const sketch = svg.querySelector('g')!.getBoundingClientRect();
    const lying = [...svg.querySelectorAll('text')].filter((text) => {
      const { top, bottom } = text.getBoundingClientRect();
      return top < sketch.bottom - 1 && bottom > sketch.top + 3;
    });
    expect(lying.map(({ textContent }) => textContent)).toEqual([]);
  });
});

test('a depth runs down from the left face to the right one, a height up', () => {
  const ys = (kind: 'down' | 'up') => {
    const [, from, , to] = numbersOf(
      draw({ kind, from: 'block', to: 'flange' }),
      '[data-part=measure]',
    );
    return to! - from!;
  };
  expect(ys('down')).toBeGreaterThan(10);
  expect(ys('up')).toBeLessThan(-10);
});

test('a centre is drawn as one, and any other end as a face', () => {
  const count = (datum: Datum) => {
    const svg = draw(datum);
    const parts = (part: string) => svg.querySelectorAll(`[data-part=${part}]`).length;
    return [parts('face'), parts('centre')];
  };
  expect(count({ kind: 'along', from: 'block face', to: 'seal' })).toEqual([2, 0]);
  expect(count({ kind: 'along', from: 'pivot', to: 'middle of the pad' })).toEqual([0, 2]);
  expect(count({ kind: 'up', from: 'floor', to: 'joint’s centre' })).toEqual([1, 1]);
});

test('it is told in words too', () => {
  expect(describeDatum({ kind: 'down', from: 'straightedge', to: 'finger tips' })).toBe(
    'Down from straightedge to finger tips.',
  );
  expect(describeDatum({ kind: 'across', from: 'bush' })).toBe('Over the outside: bush.');
});
