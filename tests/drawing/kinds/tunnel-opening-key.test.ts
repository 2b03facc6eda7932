import { expect, test } from 'vitest';
import { listKey } from '../../../src/drawing/kinds/tunnel-opening-key.ts';
import { createTunnelScene } from '../../../src/drawing/kinds/tunnel-opening-scene.ts';
import { createPen } from '../../../src/drawing/svg.ts';
import { createData, type Slots } from '../../support/drawing-data.ts';
import { ESTATE, TUNNEL_UNITS } from '../../support/tunnel-cases.ts';

const words = (slots: Slots, isLabelled = true) => {
  const data = createData('Opening', slots, TUNNEL_UNITS);
  return listKey(createPen({ document }), data, createTunnelScene(data), isLabelled).map(
    ({ text }) => text,
  );
};

test('each line of the drawing has its words', () => {
  expect(words(ESTATE)).toHaveLength(5);
  expect(words({ hole_front: 0.1, hole_rear: 0.2, hole_width: 0.07 })).toHaveLength(2);
});

test('gears that have no room in the drawing are named here', () => {
  expect(words(ESTATE, false).join(' ')).toContain('in 1st, 2nd, 3rd, 4th, 5th, R and N.');
  expect(words(ESTATE).join(' ')).toContain('in each gear.');
});

test('what is only assumed comes last', () => {
  expect(words({}).at(-1)).toContain('Not to scale');
});
