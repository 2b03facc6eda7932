import { beforeAll, describe, expect, test } from 'vitest';
import {
  dimensionsAcross,
  dimensionsAlong,
  measureColumns,
} from '../../../src/drawing/kinds/tunnel-opening-dimensions.ts';
import { createTunnelFrame } from '../../../src/drawing/kinds/tunnel-opening-frame.ts';
import { createTunnelScene } from '../../../src/drawing/kinds/tunnel-opening-scene.ts';
import { createPen, type Pen } from '../../../src/drawing/svg.ts';
import { createData, type Slots } from '../../support/drawing-data.ts';
import { ESTATE, INCH, TUNNEL_UNITS } from '../../support/tunnel-cases.ts';

let pen: Pen;
beforeAll(() => {
  pen = createPen({ document });
});

const lay = (slots: Slots) => {
  const data = createData('Opening', slots, TUNNEL_UNITS);
  const scene = createTunnelScene(data);
  const frame = createTunnelFrame(scene, 700, 120, 200);
  return {
    along: dimensionsAlong(data, scene, frame, pen),
    across: dimensionsAcross(data, scene, frame, pen),
    columns: measureColumns(data, scene),
  };
};

describe('fore and aft', () => {
  test('opening, bezel, and both centres from the datum, the nearer first', () => {
    expect(lay(ESTATE).along.map(({ text }) => text.replaceAll('\u00a0', ' '))).toEqual([
      '3.26 in opening',
      '5.50 in bezel',
      '5.86 in datum to rear centre',
      '6.12 in datum to front centre',
    ]);
  });

  test('take no room where the opening is not known', () => {
    const { along, columns } = lay({ ...ESTATE, hole_rear: undefined });
    expect(along).toEqual([]);
    expect(columns.width).toBe(0);
  });
});

describe('across', () => {
  test('saw, bezel and tunnel', () => {
    expect(lay(ESTATE).across.map(({ part }) => part)).toEqual([
      'hole_width',
      'bezel_width',
      'tunnel_width',
    ]);
  });

  test.each([
    [0.25, '0.25 in right of the tunnel’s middle'],
    [-0.25, '0.25 in left of the tunnel’s middle'],
  ])('an opening %d in aside says to which side', (aside, words) => {
    const [first] = lay({ ...ESTATE, hole_aside: aside * INCH }).across;
    expect(first!.text.replaceAll('\u00a0', ' ')).toBe(words);
  });
});
