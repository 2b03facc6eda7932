import { expect, test } from 'vitest';
import { createSpread } from '../../src/drawing/gauge-spread.ts';
import { createPen } from '../../src/drawing/svg.ts';

const LAYOUT = { bar: { x: 0, y: 10, width: 100, height: 20 }, scale: { from: 0, to: 100 } };

function draw(spread: object): readonly (string | null)[] {
  const value = { value: 50, text: '50', spread };
  const parts = createSpread(createPen({ document }), LAYOUT, value, 'red');
  return parts.map((part) => part.getAttribute('d'));
}

test('the likely range is a bar, the worst case a whisker with caps', () => {
  expect(draw({ likely: [40, 60], worst: [30, 70] })).toEqual([
    'M30 20L70 20M30 14L30 26M70 14L70 26',
    'M40 20L60 20',
  ]);
});

test('an end off the scale runs to the edge and has no cap', () => {
  expect(draw({ worst: [30, 900] })).toEqual(['M30 20L100 20M30 14L30 26']);
});

test('no spread draws nothing', () => {
  expect(draw({})).toEqual([]);
});
