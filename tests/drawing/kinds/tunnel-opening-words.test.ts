import { describe, expect, test } from 'vitest';
import { createTunnelScene } from '../../../src/drawing/kinds/tunnel-opening-scene.ts';
import {
  describeOpening,
  joinWords,
  sayAssumed,
  sayPlace,
} from '../../../src/drawing/kinds/tunnel-opening-words.ts';
import { createData, type Slots } from '../../support/drawing-data.ts';
import { ESTATE, INCH, TUNNEL_UNITS } from '../../support/tunnel-cases.ts';

const DATA = createData('Opening', ESTATE, TUNNEL_UNITS);
const tell = (slots: Slots) => {
  const data = createData('Opening', slots, TUNNEL_UNITS);
  return describeOpening(data, createTunnelScene(data)).replaceAll('\u00a0', ' ');
};

test.each([
  [[], ''],
  [['R'], 'R'],
  [['2nd', 'R'], '2nd and R'],
  [['1st', '2nd', 'R'], '1st, 2nd and R'],
])('%j is said %j', (list, words) => {
  expect(joinWords(list)).toBe(words);
});

test('a place is ahead of the datum or behind it', () => {
  expect(sayPlace(DATA, -2 * INCH)).toBe('2.00\u00a0in ahead of the datum');
  expect(sayPlace(DATA, 2 * INCH)).toBe('2.00\u00a0in behind the datum');
});

test('what is assumed is named; where all is known nothing is said', () => {
  expect(sayAssumed(createTunnelScene(DATA))).toBeUndefined();
  expect(sayAssumed(createTunnelScene(createData('Opening', {})))).toContain('its width');
});

describe('in words', () => {
  test('the drawing tells sizes, cover and tunnel', () => {
    expect(tell(ESTATE)).toBe(
      'From above, the front of the car at the top. The opening is 3.26 in long and 3.00 in wide, from 7.62 in ahead of the datum to 4.36 in ahead of the datum. The least that will do is 2.76 in long and 2.58 in wide. The bezel covers it. The tunnel is flat over 5.50 in.',
    );
  });

  test('it tells what is wrong', () => {
    const words = tell({ ...ESTATE, hole_width: 1.2 * INCH, bezel_rear: -5 * INCH });
    expect(words).toContain('The bezel does not cover it.');
    expect(words).toContain('touches the metal in 1st, 2nd, 5th and R.');
  });

  test('what is not known is a question mark', () => {
    expect(tell({})).toContain('The opening is ? long and ? wide.');
  });
});
